using System.Text.Json;
using FlowCalc.Agents;
using FlowCalc.Quantities;

namespace FlowCalc.Layouts.Reading;

/// <summary>Turns a fill given as a mass, a volume or a fill density into a mass, and sees that it fits.</summary>
static class BottleFill
{
    static readonly SizeRange[] Ways = [Sizes.FillMass, Sizes.FillVolume, Sizes.FillDensity];

    /// <summary>Mass of agent, kg; NaN where it is not known.</summary>
    public static double Read(ReadingContext context, in Members<BottleField> members, LiquidAgent? agent, double volume, double temperature)
    {
        var element = members[BottleField.Fill];
        if (element.ValueKind is JsonValueKind.Undefined || Way(context, element) is not { } way) return double.NaN;
        var fill = QuantityValue.Read(context, element, way);
        if (agent is null || !double.IsFinite(temperature) || !double.IsFinite(fill)) return double.NaN;
        if (!TemperatureReader.Suits(context, agent, temperature, members.Owner, "chargeTemperature", members[BottleField.ChargeTemperature])) return double.NaN;

        var density = agent.Density(temperature);
        var mass = way.Kind switch
        {
            QuantityKind.Volume => fill * density,
            QuantityKind.Density => fill * volume,
            _ => fill,
        };
        if (!(mass / density >= volume)) return mass;
        context.Faults.Add(element, $"read {QuantityValue.Shown(element)}: {mass:0.######} kg take up {mass / density * 1e3:0.######} L at the charge temperature and leave no room for the cushion; less than {volume * density:0.######} kg fit into {volume * 1e3:0.######} L");
        return double.NaN;
    }

    /// <summary>Which of the three is meant: the unit decides, so it is looked at before the number. A fault where it fits none.</summary>
    public static SizeRange? Way(ReadingContext context, JsonValue element)
    {
        foreach (var way in Ways)
            if (QuantityValue.Fits(element, way.Kind)) return way;
        var units = string.Join("; ", Ways.Select(way => $"{KindWords.Of(way.Kind)} takes {UnitTable.FittingUnits(way.Kind)}"));
        context.Faults.Add(element, $"read {QuantityValue.Shown(element)}: a fill is a mass, a volume or a fill density with its unit; {units}");
        return null;
    }
}

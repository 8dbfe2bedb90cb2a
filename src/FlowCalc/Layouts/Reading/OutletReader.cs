using System.Text.Json;
using FlowCalc.Bottles;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of a bottle's outlet.</summary>
enum OutletField
{
    DipTube,
    ValveKv,
    Regulator,
    Restrictor,
    BurstPressure,
    Note,
}

/// <summary>The members of a regulator.</summary>
enum RegulatorField
{
    SetPressure,
    Kv,
    Note,
}

/// <summary>The members of a restrictor.</summary>
enum RestrictorField
{
    Diameter,
    DischargeCoefficient,
    Note,
}

/// <summary>Reads what the agent passes between the inside of the bottle and the first tube.</summary>
static class OutletReader
{
    /// <summary>The outlet; null where it is missing or not an object.</summary>
    /// <param name="context">The reading.</param>
    /// <param name="element">The outlet.</param>
    /// <param name="volume">Volume of the bottle, m³; NaN where it is not known.</param>
    /// <param name="shape">Its shape; null where it is not given.</param>
    public static BottleOutlet? Read(ReadingContext context, JsonValue element, double volume, BottleShape? shape)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.Outlet.TryRead(context, element, out var members)) return null;
        TextValue.Read(context, members[OutletField.Note], "a note");
        var dipTube = DipTubeReader.Read(context, members[OutletField.DipTube], volume, shape);
        var valve = QuantityValue.Read(context, members[OutletField.ValveKv], Sizes.Kv);
        var burst = PressureValue.ReadOverAmbient(context, members[OutletField.BurstPressure], "a burst pressure");
        return new BottleOutlet(
            dipTube,
            double.IsFinite(valve) ? valve : null,
            Regulator(context, members[OutletField.Regulator]),
            Restrictor(context, members[OutletField.Restrictor]),
            double.IsFinite(burst) ? Pressure.FromPascals(burst) : null);
    }

    static Regulator? Regulator(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.Regulator.TryRead(context, element, out var members)) return null;
        members.Requires(context, RegulatorField.SetPressure, "the pressure that it holds at its outlet, over the ambient pressure");
        TextValue.Read(context, members[RegulatorField.Note], "a note");
        var set = PressureValue.ReadOverAmbient(context, members[RegulatorField.SetPressure], "a regulator's pressure");
        var kv = QuantityValue.Read(context, members[RegulatorField.Kv], Sizes.Kv);
        return double.IsFinite(set) ? new Regulator(Pressure.FromPascals(set), double.IsFinite(kv) ? kv : null) : null;
    }

    static Restrictor? Restrictor(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.Restrictor.TryRead(context, element, out var members)) return null;
        members.Requires(context, RestrictorField.Diameter, Sizes.Hole);
        members.Requires(context, RestrictorField.DischargeCoefficient, Sizes.DischargeCoefficient);
        TextValue.Read(context, members[RestrictorField.Note], "a note");
        var diameter = QuantityValue.Read(context, members[RestrictorField.Diameter], Sizes.Hole);
        var coefficient = NumberValue.Read(context, members[RestrictorField.DischargeCoefficient], Sizes.DischargeCoefficient);
        return double.IsFinite(diameter + coefficient) ? new Restrictor(Length.FromMeters(diameter), coefficient) : null;
    }
}

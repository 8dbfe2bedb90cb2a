using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of a tube of one's own.</summary>
enum TubeField
{
    OutsideDiameter,
    Wall,
    Bore,
    Roughness,
    MinimumBendRadius,
    WorkingPressure,
    Material,
    Note,
}

/// <summary>Reads tubes: of the document, of the catalogue, or a bore given in a run.</summary>
static class TubeReader
{
    /// <summary>An entry of the document's tubes; null where something is wrong.</summary>
    public static Tube? Own(ReadingContext context, string name, JsonValue element)
    {
        if (!LayoutFields.Tube.TryRead(context, element, out var members)) return null;
        var before = context.Faults.Count;
        TextValue.Read(context, members[TubeField.Note], "a note");
        var material = TextValue.Read(context, members[TubeField.Material], "a material", TextValue.LongestName);
        var outside = QuantityValue.Read(context, members[TubeField.OutsideDiameter], Sizes.OutsideDiameter);
        var bore = Bore(context, members, outside);
        if (!members.Has(TubeField.Roughness)) context.Assumptions.Add($"/tubes/{JsonPointer.Escape(name)}/roughness", TubeRoughness.UsualWords, TubeRoughness.UsualSource);
        var roughness = TubeRoughness.Read(context, element, members[TubeField.Roughness], bore);
        var radius = BendRadius(context, members[TubeField.MinimumBendRadius], bore);
        var working = PressureValue.Read(context, members[TubeField.WorkingPressure]);
        if (context.Faults.Count > before) return null;
        return new Tube
        {
            Name = name,
            Bore = Length.FromMeters(bore),
            Roughness = Length.FromMeters(roughness),
            OutsideDiameter = double.IsFinite(outside) ? Length.FromMeters(outside) : null,
            MinimumBendRadius = double.IsFinite(radius) ? Length.FromMeters(radius) : null,
            WorkingPressure = double.IsFinite(working) ? Pressure.FromPascals(working) : null,
            Material = material,
        };
    }

    /// <summary>A tube of the catalogue; its working pressure becomes absolute.</summary>
    public static Tube Of(CatalogueTube tube, double ambient) => new()
    {
        Name = tube.Id,
        Bore = tube.Bore,
        Roughness = tube.Roughness,
        OutsideDiameter = tube.OutsideDiameter,
        MinimumBendRadius = tube.MinimumBendRadius,
        WorkingPressure = tube.WorkingPressure is { } gauge ? Pressure.FromPascals(gauge.Pascals + ambient) : null,
        Material = tube.Material,
    };

    /// <summary>A bend's radius, m, half the bore or more; NaN where it is missing or wrong.</summary>
    public static double BendRadius(ReadingContext context, JsonValue element, double bore)
    {
        var radius = QuantityValue.Read(context, element, Sizes.BendRadius);
        // A bend inside which the bore would overlap itself; the correlation for bends ends there as well.
        if (!(radius < bore / 2)) return radius;
        context.Faults.Add(element, $"read {QuantityValue.Shown(element)}: {Sizes.BendRadius.What} is half the bore of {bore * 1e3:0.######} mm or more, to the centre line");
        return double.NaN;
    }

    static double Bore(ReadingContext context, in Members<TubeField> members, double outside)
    {
        if (members.Has(TubeField.Bore))
        {
            members.Refuses(context, TubeField.OutsideDiameter, "a tube has outsideDiameter and wall, or bore alone");
            members.Refuses(context, TubeField.Wall, "a tube has outsideDiameter and wall, or bore alone");
            return QuantityValue.Read(context, members[TubeField.Bore], Sizes.Bore);
        }
        var wall = QuantityValue.Read(context, members[TubeField.Wall], Sizes.Wall);
        if (!members.Has(TubeField.Wall) && !members.Has(TubeField.OutsideDiameter))
        {
            members.Requires(context, TubeField.Bore, $"{Sizes.Bore.What}, {Sizes.Bore.Words}, or outsideDiameter and wall");
            return double.NaN;
        }
        members.Requires(context, TubeField.OutsideDiameter, "outsideDiameter beside wall, or bore alone");
        members.Requires(context, TubeField.Wall, "wall beside outsideDiameter, or bore alone");
        var bore = outside - 2 * wall;
        if (!double.IsFinite(bore) || Sizes.Bore.Holds(bore)) return bore;
        context.Faults.Add(members[TubeField.Wall], $"read {QuantityValue.Shown(members[TubeField.Wall])}: it leaves a bore of {bore * 1e3:0.######} mm; {Sizes.Bore.What} is {Sizes.Bore.Words}, so that a wall is under half the outside diameter");
        return double.NaN;
    }
}

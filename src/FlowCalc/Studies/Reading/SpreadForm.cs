using System.Text.Json;
using FlowCalc.Layouts.Reading;
using FlowCalc.Quantities;
using FlowCalc.Studies.Sampling;
using FlowCalc.Studies.Tolerance;

namespace FlowCalc.Studies.Reading;

/// <summary>How far a value is spread, before it is known of which value.</summary>
/// <param name="Shape">How.</param>
/// <param name="Low">What the lower end lies at: a difference to the design value, a part of it, or the end itself; of a normal its standard deviation, negative.</param>
/// <param name="High">What the upper end lies at.</param>
/// <param name="Measure">Which of the three.</param>
sealed record SpreadForm(DistributionShape Shape, double Low, double High, SpreadMeasure Measure)
{
    const string Right = "one of normal (a standard deviation), uniform and triangular (half the width, or both ends)";

    static readonly NumberRange Part = new("a spread", 0, 1, "a part of the value, over 0 to 1", IsOpen: true);
    static readonly NumberRange EndPart = new("an end of a spread", -1, 1, "a part of the value that it is more by, less negative, -1 to 1");

    /// <summary>Reads one; null where it logged faults.</summary>
    /// <param name="context">The reading.</param>
    /// <param name="element">The spread.</param>
    /// <param name="kind">Of what kind of thing.</param>
    /// <param name="ambient">Pressure of the surroundings, Pa.</param>
    public static SpreadForm? Read(ReadingContext context, JsonValue element, SpreadKind kind, double ambient)
    {
        if (!ToleranceFields.Spread.TryRead(context, element, out var members)) return null;
        var given = Enum.GetValues<SpreadField>();
        var there = 0;
        SpreadForm? form = null;
        var reader = new SpreadSizes(kind, ambient);
        foreach (var field in given)
        {
            if (!members.Has(field)) continue;
            there++;
            form = Of(context, members[field], (DistributionShape)field, reader);
        }
        if (there == 1) return form;
        if (there > 1 || element.GetArrayLength() == 0) context.Faults.Add(element, $"read {there} of normal, uniform and triangular: a spread has {Right}");
        return null;
    }

    /// <summary>The values of a thing; null where it cannot be spread so, and why.</summary>
    public Distribution? Of(SpreadThing thing, out string? flaw)
    {
        var scale = Measure switch { SpreadMeasure.Part => thing.Design - thing.Base, _ => 1 };
        flaw = scale == 0 ? "is 0 in the layout, and a part of that is no spread; a size with its unit is right" : null;
        if (flaw is not null) return null;
        var start = Measure == SpreadMeasure.End ? 0 : thing.Design;
        var (low, high) = (start + Low * scale, start + High * scale);
        if (!(low < high && low <= thing.Design && thing.Design <= high))
            flaw = $"has in the layout the value {QuantityWriter.Text(thing.Design - thing.Base, thing.Quantity, UnitSystem.Metric, 6)}, which does not lie between the ends; it does in a sound spread, or is one of them";
        if (flaw is not null) return null;
        return Shape switch
        {
            DistributionShape.Normal => Distribution.Normal(thing.Design, High * scale),
            DistributionShape.Uniform => Distribution.Uniform(thing.Design, low, high),
            _ => Distribution.Triangular(thing.Design, low, high),
        };
    }

    static SpreadForm? Of(ReadingContext context, JsonValue element, DistributionShape shape, SpreadSizes sizes)
    {
        if (element.ValueKind is JsonValueKind.Array) return OfEnds(context, element, shape, sizes);
        if (element.ValueKind is JsonValueKind.Number)
        {
            if (!sizes.TakesParts(context, element)) return null;
            var part = NumberValue.Read(context, element, Part);
            return double.IsNaN(part) ? null : new(shape, -part, part, SpreadMeasure.Part);
        }
        var difference = sizes.Difference(context, element);
        return double.IsNaN(difference) ? null : new(shape, -difference, difference, SpreadMeasure.Difference);
    }

    static SpreadForm? OfEnds(ReadingContext context, JsonValue element, DistributionShape shape, SpreadSizes sizes)
    {
        if (shape == DistributionShape.Normal || element.GetArrayLength() != 2)
        {
            context.Faults.Add(element, shape == DistributionShape.Normal
                ? "read an array: a normal has one standard deviation, and is alike to both sides"
                : $"read {element.GetArrayLength()} entries: a spread has two ends, the lower and the upper");
            return null;
        }
        var areParts = element[0].ValueKind is JsonValueKind.Number && element[1].ValueKind is JsonValueKind.Number;
        if (areParts && !sizes.TakesParts(context, element[0])) return null;
        var low = areParts ? NumberValue.Read(context, element[0], EndPart) : sizes.End(context, element[0]);
        var high = areParts ? NumberValue.Read(context, element[1], EndPart) : sizes.End(context, element[1]);
        if (low >= high) context.Faults.Add(element, $"read {QuantityValue.Shown(element[0])} to {QuantityValue.Shown(element[1])}: the lower end comes first and is below the upper");
        return low < high ? new(shape, low, high, areParts ? SpreadMeasure.Part : SpreadMeasure.End) : null;
    }
}

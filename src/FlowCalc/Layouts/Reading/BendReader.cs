using System.Collections.Immutable;
using System.Text.Json;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of a bend.</summary>
enum BendField
{
    Angle,
    Radius,
    Count,
}

/// <summary>Reads the bends of a run that is given by its length.</summary>
static class BendReader
{
    /// <summary>The bends that could be read.</summary>
    public static ImmutableArray<Bend> Read(ReadingContext context, JsonValue element, double bore)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return [];
        if (element.ValueKind is not JsonValueKind.Array)
        {
            context.Faults.Add(element, $"read {Said.Value(element)}: bends are an array of objects with angle, radius and, if more than one, count");
            return [];
        }
        var bends = ImmutableArray.CreateBuilder<Bend>(element.GetArrayLength());
        foreach (var entry in element.EnumerateArray())
        {
            context.Pass(bends.Count);
            if (!LayoutFields.Bend.TryRead(context, entry, out var members)) continue;
            members.Requires(context, BendField.Angle, Sizes.BendAngle);
            members.Requires(context, BendField.Radius, Sizes.BendRadius);
            var angle = QuantityValue.Read(context, members[BendField.Angle], Sizes.BendAngle);
            var radius = TubeReader.BendRadius(context, members[BendField.Radius], bore);
            var count = NumberValue.Count(context, members[BendField.Count]);
            if (double.IsFinite(angle + radius)) bends.Add(new Bend(Angle.FromRadians(angle), Length.FromMeters(radius), count));
        }
        return bends.DrainToImmutable();
    }
}

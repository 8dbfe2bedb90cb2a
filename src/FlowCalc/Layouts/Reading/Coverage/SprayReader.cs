using System.Text.Json;
using FlowCalc.Layouts.Coverage;
using UnitsNet;

namespace FlowCalc.Layouts.Reading.Coverage;

/// <summary>Reads the spray of a nozzle.</summary>
static class SprayReader
{
    /// <summary>The spray; null where it is missing or none.</summary>
    public static Spray? Read(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.Spray.TryRead(context, element, out var members)) return null;
        var before = context.Faults.Count;
        TextValue.Read(context, members[SprayField.Note], "a note");
        members.Requires(context, SprayField.Angle, Sizes.SprayAngle);
        var angle = QuantityValue.Read(context, members[SprayField.Angle], Sizes.SprayAngle);
        var (nearest, farthest) = Range(context, members[SprayField.Range]);
        return context.Faults.Count > before ? null : new Spray(Angle.FromRadians(angle), nearest, farthest);
    }

    static (Length? Nearest, Length? Farthest) Range(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return (null, null);
        const string right = "the nearest and the farthest distance at which the spray does its work, such as [\"0.1 m\", \"0.6 m\"]";
        if (element.ValueKind is not JsonValueKind.Array || element.GetArrayLength() != 2)
        {
            context.Faults.Add(element, $"read {Said.Entries(element)}: {right}");
            return (null, null);
        }
        var (nearest, farthest) = (LengthValue.Read(context, element[0], Sizes.Throw), LengthValue.Read(context, element[1], Sizes.Throw));
        if (nearest >= farthest) context.Faults.Add(element, $"read {QuantityValue.Shown(element[0])} and {QuantityValue.Shown(element[1])}: {right}");
        return (nearest, farthest);
    }
}

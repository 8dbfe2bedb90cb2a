using System.Text.Json;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads places and directions: arrays of three.</summary>
static class SpaceValue
{
    /// <summary>A place with a unit to each coordinate; null where it is missing or none.</summary>
    public static Place? Place(ReadingContext context, JsonValue element) => Place(context, element, Sizes.Coordinate);

    /// <summary>The same, its coordinates in a range of their own.</summary>
    public static Place? Place(ReadingContext context, JsonValue element, SizeRange range)
    {
        if (!IsTriple(context, element, "three lengths [x, y, z], each with a unit")) return null;
        var x = QuantityValue.Read(context, element[0], range);
        var y = QuantityValue.Read(context, element[1], range);
        var z = QuantityValue.Read(context, element[2], range);
        return double.IsFinite(x + y + z) ? new Place(Length.FromMeters(x), Length.FromMeters(y), Length.FromMeters(z)) : null;
    }

    /// <summary>Three bare numbers; null where they are missing or none.</summary>
    public static Direction? Direction(ReadingContext context, JsonValue element, NumberRange range, bool mayBeZero)
    {
        if (!IsTriple(context, element, "three bare numbers [x, y, z]")) return null;
        var x = NumberValue.Read(context, element[0], range);
        var y = NumberValue.Read(context, element[1], range);
        var z = NumberValue.Read(context, element[2], range);
        if (!double.IsFinite(x + y + z)) return null;
        var direction = new Direction(x, y, z);
        if (mayBeZero || direction.Length > 1e-6) return direction;
        context.Faults.Add(element, "read a direction of no length; one of the three must differ from 0");
        return null;
    }

    static bool IsTriple(ReadingContext context, JsonValue element, string right)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return false;
        if (element.ValueKind is JsonValueKind.Array && element.GetArrayLength() == 3) return true;
        context.Faults.Add(element, element.ValueKind is JsonValueKind.Array
            ? $"read {element.GetArrayLength()} entries: {right} are right"
            : $"read {Said.Value(element)}: {right} are right");
        return false;
    }
}

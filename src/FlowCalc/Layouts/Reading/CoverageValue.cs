using System.Text.Json;

namespace FlowCalc.Layouts.Reading;

/// <summary>Checks what is in the document for coverage alone; no flow hangs on it.</summary>
static class CoverageValue
{
    /// <summary>Where a nozzle points: three bare numbers, not all 0.</summary>
    public static void CheckAim(ReadingContext context, JsonValue element) =>
        SpaceValue.Direction(context, element, Sizes.DirectionPart, mayBeZero: false);

    /// <summary>A nozzle's spray: an object whose members are not looked at, but none may come twice.</summary>
    public static void CheckSpray(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return;
        if (element.ValueKind is not JsonValueKind.Object)
        {
            context.Faults.Add(element, $"read {Said.Value(element)}: a spray is an object");
            return;
        }
        Stack<JsonValue> open = new([element]);
        while (open.TryPop(out var next))
        {
            if (next.ValueKind is JsonValueKind.Array)
                foreach (var entry in next.EnumerateArray()) open.Push(entry);
            else if (next.ValueKind is JsonValueKind.Object)
                CheckMembers(context, next, open);
        }
    }

    // Every fault further in repeats the names on its way, so that these must have a bound.
    static void CheckMembers(ReadingContext context, JsonValue element, Stack<JsonValue> open)
    {
        var passes = 0;
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (var property in element.EnumerateObject())
        {
            context.Pass(passes++);
            var name = RawText.Decode(property.RawName);
            if (name is null)
            {
                context.Faults.Add(property.Value, "read a name that holds half of a surrogate pair, which stands for no character");
                continue;
            }
            if (TextValue.IsLonger(name, TextValue.LongestName))
            {
                context.Faults.Add(element, $"read the name {Said.Name(name)}: a name has at most {TextValue.LongestName} characters");
                continue;
            }
            if (!seen.Add(name)) context.Faults.Add(property.Value, $"repeated: {Said.Name(name)} is there already");
            open.Push(property.Value);
        }
    }
}

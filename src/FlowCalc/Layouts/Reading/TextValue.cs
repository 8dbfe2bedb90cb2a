using System.Text.Json;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads text, names, choices and flags.</summary>
static class TextValue
{
    public const int LongestName = 200, LongestNote = 10_000;

    /// <summary>Free text; null where it is missing or not text.</summary>
    public static string? Read(ReadingContext context, JsonValue element, string what, int longest = LongestNote)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return null;
        if (element.ValueKind is not JsonValueKind.String)
        {
            context.Faults.Add(element, $"read {Said.Value(element)}: {what} is text");
            return null;
        }
        var text = RawText.Decode(element.Unquoted);
        if (text is null) context.Faults.Add(element, $"read {Said.Value(element)}: an escape is half of a surrogate pair, which stands for no character");
        else if (IsLonger(text, longest))
        {
            context.Faults.Add(element, $"read {Said.Value(element)}: {CodePoints(text)} characters; {what} has at most {longest}");
            return null;
        }
        return text;
    }

    /// <summary>A name or an id; null where it is missing or cannot be one.</summary>
    public static string? Name(ReadingContext context, JsonValue element, string what)
    {
        var name = Read(context, element, what);
        if (name is null || NameFlaw(name) is not { } flaw) return name;
        context.Faults.Add(element, $"read {Said.Value(element)}: {what} {flaw}");
        return null;
    }

    /// <summary>What keeps a text from being a name; null for nothing.</summary>
    public static string? NameFlaw(string name)
    {
        if (name.Length == 0 || IsLonger(name, LongestName)) return "has 1 to 200 characters";
        foreach (var character in name)
            if (char.IsControl(character)) return "has no control characters";
        return null;
    }

    /// <summary>Whether a text has more than so many code points, which is how JSON Schema counts.</summary>
    public static bool IsLonger(string text, int longest) => text.Length > longest && CodePoints(text) > longest;

    /// <summary>One of a list of words; −1 where it is missing or another.</summary>
    public static int Choice(ReadingContext context, JsonValue element, Vocabulary words)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return -1;
        var index = element.ValueKind is JsonValueKind.String ? words.IndexOf(element.Unquoted) : -1;
        if (index < 0) context.Faults.Add(element, $"read {Said.Value(element)}: one of {words.Listed} is right");
        return index;
    }

    /// <summary>True or false; false where it is missing.</summary>
    public static bool Flag(ReadingContext context, JsonValue element, string what)
    {
        if (element.ValueKind is not (JsonValueKind.True or JsonValueKind.False or JsonValueKind.Undefined))
            context.Faults.Add(element, $"read {Said.Value(element)}: {what} is true or false");
        return element.ValueKind is JsonValueKind.True;
    }

    static int CodePoints(string text)
    {
        var count = text.Length;
        foreach (var character in text)
            if (char.IsLowSurrogate(character)) count--;
        return count;
    }
}

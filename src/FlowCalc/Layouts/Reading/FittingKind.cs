using System.Text;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads the kind of a fitting: free text, but for three kinds that have a meaning.</summary>
static class FittingKind
{
    const string Union = "union";

    /// <summary>Whether the engine knows what the kind loses.</summary>
    public static bool HasMeaning(string kind) => kind is Fitting.Elbow or Union or Fitting.BulkheadUnion;

    /// <summary>The kind; null where it is missing or wrong, as is one that only case, spaces or hyphens keep from having a meaning.</summary>
    public static string? Read(ReadingContext context, JsonValue element)
    {
        var kind = TextValue.Name(context, element, "a kind");
        if (kind is null || HasMeaning(kind) || Meant(kind) is not { } meant) return kind;
        context.Faults.Add(element, $"read {Said.Value(element)}: did you mean '{meant}'? As that it has a meaning, and would have none as it stands");
        return null;
    }

    static string? Meant(string kind) => Letters(kind) switch
    {
        "ELBOW" => Fitting.Elbow,
        "UNION" => Union,
        "BULKHEADUNION" => Fitting.BulkheadUnion,
        _ => null,
    };

    static string Letters(string kind)
    {
        var letters = new StringBuilder(kind.Length);
        foreach (var character in kind)
            if (!char.IsWhiteSpace(character) && !IsHyphen(character)) letters.Append(char.ToUpperInvariant(character));
        return letters.ToString();
    }

    // Among them the soft hyphen and the hyphens and dashes of Unicode, U+2010 to U+2015.
    static bool IsHyphen(char character) => character is '-' or '_' or '\u00AD' or (>= '\u2010' and <= '\u2015') or '\u2212';
}

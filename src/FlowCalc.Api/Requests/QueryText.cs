using FlowCalc.Api.Faults;

namespace FlowCalc.Api.Requests;

/// <summary>Reads a query parameter that holds a text of the caller.</summary>
internal static class QueryText
{
    /// <summary>Most characters of it.</summary>
    public const int Longest = 100;

    /// <summary>The text; null where none is given or what is given does not fit.</summary>
    /// <param name="request">The request.</param>
    /// <param name="name">The parameter.</param>
    /// <param name="fault">What does not fit is added here.</param>
    public static string? Read(HttpRequest request, string name, ref Problem? fault)
    {
        if (!request.Query.TryGetValue(name, out var values)) return null;
        var why = values switch
        {
            [{ Length: > 0 and <= Longest } text] when text.Any(char.IsControl) => "It has control characters; it takes a line of text.",
            [{ Length: > 0 and <= Longest }] => null,
            { Count: > 1 } => "It stands more than once; once is enough.",
            _ => FormattableString.Invariant($"It has {values.ToString().Length} characters; it takes 1 to {Longest}."),
        };
        if (why is null) return values[0];
        fault = Problems.Together(fault, Problems.Query(name, why));
        return null;
    }
}

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
        var why = values.Count > 1 ? "It stands more than once; once is enough." : Fault("It", values.ToString());
        if (why is null) return values[0];
        fault = Problems.Together(fault, Problems.Query(name, why));
        return null;
    }

    /// <summary>What is wrong with a text; null where it is a line that can be taken.</summary>
    /// <param name="subject">What the sentence calls it.</param>
    /// <param name="text">The text.</param>
    public static string? Fault(string subject, string text) =>
        text.Length is 0 or > Longest ? FormattableString.Invariant($"{subject} has {text.Length} characters; it takes 1 to {Longest}.")
        : text.Any(char.IsControl) ? $"{subject} has control characters; it takes a line of text."
        : null;
}

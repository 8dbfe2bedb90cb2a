using FlowCalc.Api.Faults;

namespace FlowCalc.Api.Requests;

/// <summary>Reads a query parameter that has one of a few words.</summary>
internal static class QueryChoice
{
    /// <summary>Place of the word asked for; 0, the first, where nothing is asked or what is asked does not fit.</summary>
    /// <param name="request">The request.</param>
    /// <param name="name">The parameter.</param>
    /// <param name="words">The words that fit.</param>
    /// <param name="fault">What does not fit is added here.</param>
    public static int Read(HttpRequest request, string name, string[] words, ref Problem? fault)
    {
        if (!request.Query.TryGetValue(name, out var values)) return 0;
        if (values.Count != 1) fault = Problems.Together(fault, Problems.Query(name, "It stands more than once; once is enough."));
        else if (Array.IndexOf(words, values[0]) is >= 0 and var word) return word;
        else fault = Problems.Together(fault, Problems.Query(name, $"\"{Problems.Shortened(values[0] ?? "")}\" does not fit; those that do are {string.Join(" and ", words)}."));
        return 0;
    }
}

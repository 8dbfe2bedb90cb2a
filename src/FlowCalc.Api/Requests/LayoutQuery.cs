using FlowCalc.Api.Answers;
using FlowCalc.Api.Faults;

namespace FlowCalc.Api.Requests;

/// <summary>What the query of a call on a layout asks for.</summary>
/// <param name="Write">The units of the answer.</param>
/// <param name="Explains">Whether the answer is to be explained.</param>
internal readonly record struct LayoutQuery(UnitWriter Write, bool Explains)
{
    public const string Explain = "explain";

    /// <summary>Reads a query.</summary>
    /// <param name="request">The request.</param>
    /// <param name="mayExplain">Whether the call can explain its answer.</param>
    /// <param name="others">Names that the call takes besides and has read itself.</param>
    /// <param name="fault">What does not fit; null where all does.</param>
    public static LayoutQuery Read(HttpRequest request, bool mayExplain, string[] others, out Problem? fault)
    {
        if (!mayExplain || !request.QueryString.HasValue)
            return new(QueryUnits.Read(request, out fault, others), false);
        var write = QueryUnits.Read(request, out fault, [Explain, .. others]);
        var values = request.Query[Explain];
        if (values.Count > 1)
            fault = Problems.Together(fault, Problems.Query(Explain, "It stands more than once; once is enough."));
        else if (values is [var word] and not ["true" or "false"])
            fault = Problems.Together(fault, Problems.Query(Explain, $"\"{Problems.Shortened(word ?? "")}\" does not fit; it takes true or false."));
        return new(write, values is ["true"]);
    }
}

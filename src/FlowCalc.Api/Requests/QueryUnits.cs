using FlowCalc.Api.Answers;
using FlowCalc.Api.Faults;
using FlowCalc.Quantities;

namespace FlowCalc.Api.Requests;

/// <summary>Reads <c>?units=</c>, and refuses whatever else a query holds.</summary>
internal static class QueryUnits
{
    public const string Name = "units";

    static readonly UnitWriter Default = UnitWriter.Of(UnitSystem.Metric);

    /// <summary>The writer asked for; metric where nothing is asked.</summary>
    /// <param name="request">The request.</param>
    /// <param name="fault">What does not fit; null where all does.</param>
    /// <param name="others">Names that the call takes besides and reads itself.</param>
    public static UnitWriter Read(HttpRequest request, out Problem? fault, params ReadOnlySpan<string> others)
    {
        fault = null;
        var write = Default;
        if (!request.QueryString.HasValue)
            return write;
        foreach (var (name, values) in request.Query)
        {
            if (others.Contains(name))
                continue;
            if (name != Name)
                fault = Problems.Together(fault, Problems.Query(name, $"This call does not take it; it takes {string.Join(", ", [Name, .. others])}; units is metric, us or si."));
            else if (values.Count != 1)
                fault = Problems.Together(fault, Problems.Query(Name, "It stands more than once; once is enough."));
            else if (Parse(values[0]) is { } system)
                write = UnitWriter.Of(system);
            else
                fault = Problems.Together(fault, Problems.Query(Name, $"\"{Problems.Shortened(values[0] ?? "")}\" is no system of units; those that fit are metric, us and si."));
        }
        return write;
    }

    /// <summary>The fault of a query where none is taken; null where there is none.</summary>
    public static Problem? RefuseAny(HttpRequest request) =>
        request.QueryString.HasValue && request.Query.Keys.FirstOrDefault() is { } name ? Problems.Query(name, "This call takes no query.") : null;

    static UnitSystem? Parse(string? word) => word switch
    {
        "metric" => UnitSystem.Metric,
        "us" => UnitSystem.Us,
        "si" => UnitSystem.Si,
        _ => null,
    };
}

using System.Collections.Immutable;
using System.Text.Json;
using FlowCalc.Api.Answers;
using FlowCalc.Layouts.Editing;
using FlowCalc.Studies.Sizing;

namespace FlowCalc.Api.Size;

/// <summary>Writes the changes of a document, each with its reason.</summary>
internal static class SizeChanges
{
    /// <summary>What stands for nothing where a document's own JSON would stand.</summary>
    public static readonly JsonElement Nothing = Null();

    // A reason is a flow of its own.
    const int MostReasons = 60;

    /// <summary>The changes.</summary>
    public static ImmutableArray<SizeChangeAnswer> Of(SizingProblem problem, SizedChoice choice, SizedDocument document, UnitWriter write, CancellationToken cancel)
    {
        var reasons = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var run in choice.Runs.Take(MostReasons))
            reasons[EditPath.Of("runs", problem.Layout.Runs[run].Id, "tube")] = SizingReasons.OfRun(problem, choice, run, write.System, cancel);
        foreach (var point in choice.Nozzles.Take(MostReasons - Math.Min(MostReasons, choice.Runs.Length)))
        {
            var reason = SizingReasons.OfNozzle(problem, choice, point, write.System, cancel);
            foreach (var member in (string[])["nozzle", "orifice", "kFactor"])
                reasons[EditPath.Of("points", problem.Layout.Points[point].Id, member)] = reason;
        }
        return [.. document.Changes.Select(change => Of(change, change.To is null ? null : reasons.GetValueOrDefault(change.Path)))];
    }

    /// <summary>One change.</summary>
    public static SizeChangeAnswer Of((string Path, JsonElement? From, JsonElement? To) change, string? reason) => new(change.Path, change.From ?? Nothing, change.To ?? Nothing, reason);

    static JsonElement Null()
    {
        using var parsed = JsonDocument.Parse("null");
        return parsed.RootElement.Clone();
    }
}

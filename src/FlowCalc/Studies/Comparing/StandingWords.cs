using FlowCalc.Findings;
using FlowCalc.Quantities;

namespace FlowCalc.Studies.Comparing;

/// <summary>Why a layout has its place in a ranking, in a sentence.</summary>
static class StandingWords
{
    /// <summary>The sentence of the best.</summary>
    public static string OfFirst(VariantResult first, UnitSystem units) => $"{Name(first)} is best: {State(first, units)}.";

    /// <summary>The sentence of one behind another.</summary>
    public static string Behind(VariantResult one, VariantResult before, StandingReason by, UnitSystem units) =>
        $"{Name(one)} is behind {Name(before)} {Because(one, before, by, units)}: {State(one, units)}.";

    static string Because(VariantResult one, VariantResult before, StandingReason by, UnitSystem units) => by switch
    {
        StandingReason.NoFlow => "because no flow was found for it",
        StandingReason.Verdict => $"by its verdict ({SeverityOf(one)} against {SeverityOf(before)})",
        StandingReason.Fails => $"because more fails ({Places(one.Standing.Fails)} against {Places(before.Standing.Fails)})",
        StandingReason.Warns => $"because more is warned of ({Places(one.Standing.Warns)} against {Places(before.Standing.Warns)})",
        StandingReason.Deviation => $"because its worst nozzle is further from its share ({Worst(one)} against {Worst(before)})",
        StandingReason.Time => $"because it takes longer ({Time(one, units)} against {Time(before, units)})",
        _ => "only by the order of the request",
    };

    static string State(VariantResult one, UnitSystem units)
    {
        if (one.Failure is { } failure) return failure.TrimEnd('.');
        var (standing, words) = (one.Standing, new List<string>());
        words.Add($"verdict {SeverityOf(one)}");
        if (standing.Fails > 0) words.Add($"{Places(standing.Fails)} failing");
        if (standing.Warns > 0) words.Add($"{Places(standing.Warns)} warned of");
        if (standing.WorstNozzle >= 0) words.Add($"worst nozzle {Worst(one)}");
        if (one.Discharge is not null) words.Add($"done {Time(one, units)}");
        return string.Join(", ", words);
    }

    static string Worst(VariantResult one) =>
        one.Standing is { WorstDeviation: { } deviation, WorstNozzle: >= 0 and var nozzle } ? $"{Wording.Id(one.Variant.Layout.Points[nozzle].Id)} at {Wording.Signed(deviation)}" : "none with a wanted share";

    static string Time(VariantResult one, UnitSystem units)
    {
        var slowest = one.Standing.SlowestTime is { } time ? $"after {Wording.Of(time.Seconds, QuantityKind.Time, units)} at the latest" : "never";
        return one.Standing.NeverDone > 0 && one.Standing.SlowestTime is not null ? $"{slowest} and in {Wording.Count(one.Standing.NeverDone, "case")} never" : slowest;
    }

    static string Name(VariantResult one) => $"'{Wording.Id(one.Variant.Name)}'";

    static string Places(int count) => Wording.Count(count, "place");

    static string SeverityOf(VariantResult one) => one.Standing.Verdict.ToString().ToLowerInvariant();
}

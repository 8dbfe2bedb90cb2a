using FlowCalc.Discharge;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Discharges;

/// <summary>The time of the required part against the requirement, with the band of the model.</summary>
static class RequiredTimes
{
    public static void Find(JudgedDischarge judged, FindingList findings)
    {
        if (judged.Discharge.Requirement is not { } rule) return;
        var severity = judged.Discharge.IsRequirementStated ? Severity.Fail : Severity.Warn;
        var wording = new RequirementWording(judged, rule);
        var (coldest, warmer) = Keepers(judged, rule);
        CaseHits never = new(judged), slow = new(judged), fast = new(judged), cold = new(judged), coldNever = new(judged), maySlow = new(judged), mayFast = new(judged);
        foreach (var (at, one) in judged.Answered)
        {
            var isCold = one.Temperature.Kelvins <= coldest && warmer.ContainsKey(one.Attitude);
            if (one.RequiredTime is not { } reached)
            {
                var part = JudgedDischarge.Delivered(one) / wording.Whole;
                (isCold ? coldNever : never).Add(at, new Hit(-1, judged.SupplyId, severity, -part, part, rule.Part));
                continue;
            }
            if (IsLate(rule, reached.Seconds)) (isCold ? cold : slow).Add(at, Late(judged, severity, rule, reached.Seconds));
            else if (IsEarly(rule, reached.Seconds)) fast.Add(at, Early(judged, severity, rule, reached.Seconds));
            else if (one.Band?.RequiredTime is { } band)
            {
                // An end of the band that is not there is a time that never comes.
                var (low, high) = (band.Low?.Seconds ?? double.PositiveInfinity, band.High?.Seconds ?? double.PositiveInfinity);
                if (IsLate(rule, high)) maySlow.Add(at, Late(judged, Severity.Note, rule, reached.Seconds) with { Badness = high });
                if (IsEarly(rule, low)) mayFast.Add(at, Early(judged, Severity.Note, rule, reached.Seconds) with { Badness = -low });
            }
        }

        var source = judged.Discharge.IsRequirementStated ? DefaultLimits.StatedInTheDocument : ApplicationRequirement.SourceOf(judged.Layout.Application, judged.Layout.Agent) ?? ApplicationRequirement.MotorsportSource;
        Add(never, FindingCodes.DischargeTooSlow, null, (one, _) => wording.Never(one));
        Add(slow, FindingCodes.DischargeTooSlow, QuantityKind.Time, (_, hit) => wording.Slow(hit));
        Add(coldNever, FindingCodes.ColdUnderpowered, null, (one, _) => wording.Never(one) + wording.While(warmer[one.Attitude]));
        Add(cold, FindingCodes.ColdUnderpowered, QuantityKind.Time, (one, hit) => wording.Slow(hit) + wording.While(warmer[one.Attitude]));
        Add(fast, FindingCodes.DischargeTooFast, QuantityKind.Time, (_, hit) => wording.Fast(hit));
        Add(maySlow, FindingCodes.DischargeTooSlow, QuantityKind.Time, (one, hit) => wording.Marginal(one, hit, "latest"));
        Add(mayFast, FindingCodes.DischargeTooFast, QuantityKind.Time, (one, hit) => wording.Marginal(one, hit, "earliest"));

        void Add(CaseHits hits, string code, QuantityKind? kind, Func<DischargeCase, Hit, string> sentence) =>
            hits.AddTo(findings, code, source, kind, _ => [judged.SupplyId], (one, hit) => sentence(one, hit) + wording.Whose);
    }

    static Hit Late(JudgedDischarge judged, Severity severity, Requirement rule, double seconds) =>
        new(-1, judged.SupplyId, severity, seconds, seconds, rule.Latest!.Value.Seconds);

    static Hit Early(JudgedDischarge judged, Severity severity, Requirement rule, double seconds) =>
        new(-1, judged.SupplyId, severity, -seconds, seconds, rule.Earliest!.Value.Seconds);

    static bool IsLate(Requirement rule, double seconds) => rule.Latest is { } latest && Grading.IsBeyond(seconds, latest.Seconds);

    static bool IsEarly(Requirement rule, double seconds) => rule.Earliest is { } earliest && Grading.IsBeyond(seconds, earliest.Seconds, lowerIsWorse: true);

    // By attitude the next case over the coldest temperature that keeps the rule; only cases with a discharge count.
    static (double Coldest, Dictionary<Attitude, DischargeCase> Warmer) Keepers(JudgedDischarge judged, Requirement rule)
    {
        var coldest = double.PositiveInfinity;
        foreach (var (_, one) in judged.Answered) coldest = Math.Min(coldest, one.Temperature.Kelvins);
        Dictionary<Attitude, DischargeCase> warmer = [];
        foreach (var (_, one) in judged.Answered)
        {
            if (!(one.Temperature.Kelvins > coldest) || one.RequiredTime is not { } time || IsLate(rule, time.Seconds) || IsEarly(rule, time.Seconds)) continue;
            if (!warmer.TryGetValue(one.Attitude, out var known) || one.Temperature < known.Temperature) warmer[one.Attitude] = one;
        }
        return (coldest, warmer);
    }
}

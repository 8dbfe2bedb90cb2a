using FlowCalc.Discharge;
using FlowCalc.Limits;

namespace FlowCalc.Findings.Discharges;

/// <summary>Liquid that the dip tube does not reach: upright, where it uncovers early, and in other attitudes, where it may be blind.</summary>
static class DipTubes
{
    // A bottle of which nothing at all is drawn; the last digits of a volume may be out.
    const double Nothing = 1 - 1e-9;

    public static bool IsBlind(DischargeCase one) => one.OutOfReach >= Nothing;

    /// <summary>Whether no nozzle gets any agent because of it; an agent that boils still gives its vapour.</summary>
    public static bool GivesNothing(JudgedDischarge judged, DischargeCase one) => IsBlind(one) && !judged.Layout.Agent.IsExpanding;

    public static void Find(JudgedDischarge judged, FindingList findings)
    {
        var (blind, early) = (judged.Limit(FindingCodes.BottleBlindWhenInverted), judged.Limit(FindingCodes.DipTubeUncoversEarly));
        CaseHits blindHits = new(judged), earlyHits = new(judged);
        // Whoever names the attitudes says that it has to work in them; those taken by default are another's rule.
        var harden = judged.Layout.Cases is { Attitudes.IsDefaultOrEmpty: false } && !IsStated(judged, FindingCodes.BottleBlindWhenInverted);
        foreach (var (at, one) in judged.Answered)
        {
            var isUpright = JudgedDischarge.IsUpright(one.Attitude);
            var limit = isUpright ? early : blind;
            var (severity, step) = Grading.Of(limit, one.OutOfReach);
            if (severity == Severity.Pass && IsBlind(one)) (severity, step) = (Severity.Warn, 1);
            if (severity == Severity.Pass) continue;
            if (!isUpright && harden) severity = Severity.Fail;
            (isUpright ? earlyHits : blindHits).Add(at, new Hit(-1, judged.SupplyId, severity, one.OutOfReach, one.OutOfReach, step));
        }
        earlyHits.AddTo(findings, FindingCodes.DipTubeUncoversEarly, early.Source, null, _ => [judged.SupplyId], (one, hit) => Sentence(judged, one, hit));
        blindHits.AddTo(findings, FindingCodes.BottleBlindWhenInverted,
            harden ? $"{DefaultLimits.StatedInTheDocument}: the attitude; the part: {DefaultLimits.CommonPractice}" : blind.Source, null, _ => [judged.SupplyId], (one, hit) => Sentence(judged, one, hit));
    }

    static bool IsStated(JudgedDischarge judged, string code)
    {
        foreach (var limit in judged.Layout.Limits)
            if (limit.Code == code) return true;
        return false;
    }

    static string Sentence(JudgedDischarge judged, DischargeCase one, Hit hit)
    {
        if (!judged.Layout.Agent.IsExpanding) return OfLiquid(one, hit);
        return IsBlind(one)
            ? $"the dip tube reaches no liquid: vapour comes out first, slowly and cold, and the liquid only as it boils, limit {Wording.Percent(hit.Bound)} of the liquid out of reach"
            : $"{Wording.Percent(hit.Measured, hit.Bound)} of the liquid are out of the dip tube's reach and come out only as vapour, limit {Wording.Percent(hit.Bound)}";
    }

    static string OfLiquid(DischargeCase one, Hit hit) => IsBlind(one)
        ? $"the dip tube reaches no liquid: the bottle blows off its gas and no nozzle gets any agent, limit {Wording.Percent(hit.Bound)} of the contents out of reach"
        : $"{Wording.Percent(hit.Measured, hit.Bound)} of the contents are out of the dip tube's reach, limit {Wording.Percent(hit.Bound)}";
}

using FlowCalc.Agents;
using FlowCalc.Coverage;
using FlowCalc.Quantities;
using UnitsNet;

namespace FlowCalc.Findings.Coverage;

/// <summary>What the air of zones with people becomes at its hottest.</summary>
static class Exposures
{
    public static void Find(JudgedCoverage judged, FindingList findings)
    {
        if (judged.Layout.Agent is not ExpandingAgent { People: not "never" } agent) return;
        for (var at = 0; at < judged.Result.Zones.Length; at++)
        {
            var fill = judged.Result.Zones[at];
            if (!fill.Zone.Occupied || fill.Exposure is not { } exposure) continue;
            if (agent.People != "oxygen") Harm(judged, findings, fill, exposure, at);
            Oxygen(judged, findings, fill, exposure, at);
            Leaving(judged, findings, fill, exposure, at);
        }
    }

    static void Harm(JudgedCoverage judged, FindingList findings, ZoneFill fill, ZoneExposure exposure, int at)
    {
        if (Beyond(CoverageCodes.OverLoael, exposure.Harmful, "the lowest at which harm was seen (LOAEL)")) return;
        Beyond(CoverageCodes.OverNoael, exposure.Unharmed, "the highest at which no harm was seen (NOAEL)");

        bool Beyond(string code, double? level, string what)
        {
            if (level is not { } known) return false;
            var limit = judged.Limit(code);
            var (severity, step) = Grading.Of(limit, exposure.Most / known);
            if (severity == Severity.Pass) return false;
            findings.Add(new Finding(code, severity, [fill.Zone.Id], $"{Start(judged, fill, exposure)} {Wording.Percent(exposure.Most, known)}, over {(step == 1 ? "" : $"{Wording.Number(step)} times ")}{Wording.Percent(known)}, {what}{Window(judged, fill)}.",
                new Measure(exposure.Most / known, null), new Measure(step, null), limit.Source, null, judged.CaseName(fill.Mass?.MostCase)), at);
            return true;
        }
    }

    static void Oxygen(JudgedCoverage judged, FindingList findings, ZoneFill fill, ZoneExposure exposure, int at)
    {
        var limit = judged.Limit(CoverageCodes.LowOxygen);
        var (severity, step) = Grading.Of(limit, exposure.Oxygen, lowerIsWorse: true);
        if (severity == Severity.Pass) return;
        findings.Add(new Finding(CoverageCodes.LowOxygen, severity, [fill.Zone.Id],
            $"{Start(judged, fill, exposure)} {Wording.Percent(exposure.Most)}, which leaves {Wording.Percent(exposure.Oxygen, step)} of oxygen, less than {Wording.Percent(step)}{Window(judged, fill)}.",
            new Measure(exposure.Oxygen, null), new Measure(step, null), limit.Source, null, judged.CaseName(fill.Mass?.MostCase)), at);
    }

    static void Leaving(JudgedCoverage judged, FindingList findings, ZoneFill fill, ZoneExposure exposure, int at)
    {
        if (fill.Zone.Leaving is not { } leaving || exposure.Allowed is not { } allowed) return;
        var limit = judged.Limit(CoverageCodes.LeavingTooSlow);
        if (allowed.Seconds == 0)
        {
            findings.Add(new Finding(CoverageCodes.LeavingTooSlow, Severity.Fail, [fill.Zone.Id],
                $"At {Wording.Percent(exposure.Most)} of agent nobody may be in zone {Wording.Id(fill.Zone.Id)} at all, and people need {judged.Text(leaving)} to leave it: hold the discharge back until they are out.",
                null, null, exposure.AllowedSource ?? limit.Source, null, judged.CaseName(fill.Mass?.MostCase)), at);
            return;
        }
        var (severity, step) = Grading.Of(limit, leaving / allowed);
        if (severity == Severity.Pass) return;
        findings.Add(new Finding(CoverageCodes.LeavingTooSlow, severity, [fill.Zone.Id],
            $"People need {judged.Text(leaving)} to leave zone {Wording.Id(fill.Zone.Id)}, in which nobody may be for over {judged.Text(Duration.FromSeconds(allowed.Seconds * step))} at {Wording.Percent(exposure.Most)} of agent: hold the discharge back until they are out.",
            new Measure(leaving / allowed, null), new Measure(step, null), exposure.AllowedSource ?? limit.Source, null, judged.CaseName(fill.Mass?.MostCase)), at);
    }

    static string Start(JudgedCoverage judged, ZoneFill fill, ZoneExposure exposure) =>
        $"The most that zone {Wording.Id(fill.Zone.Id)} can get, {judged.Text(fill.Mass!.Most)}, makes at {judged.Text(exposure.Hottest)} a concentration of";

    // No fill clears both where what is needed in the cold harms in the heat.
    static string Window(JudgedCoverage judged, ZoneFill fill) => fill.Need is { HasWindow: false, MostMass: { } most } need
        ? $"; no fill is enough at {judged.Text(need.Coldest)} ({judged.Text(need.Mass)}) and harmless at the hottest ({judged.Text(most)})" : "";
}

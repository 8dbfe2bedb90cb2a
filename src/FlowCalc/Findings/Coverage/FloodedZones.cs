using FlowCalc.Coverage;
using FlowCalc.Layouts.Coverage;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Coverage;

/// <summary>Zones that are to be flooded: whether they hold their agent, and get enough of it.</summary>
static class FloodedZones
{
    public static void Find(JudgedCoverage judged, FindingList findings)
    {
        for (var at = 0; at < judged.Result.Zones.Length; at++)
        {
            var fill = judged.Result.Zones[at];
            if (fill.Protection == Protection.Flooding) Claim(judged, findings, fill, at);
            if (fill is { Need: { } need, Mass: { } mass }) Enough(judged, findings, fill, need, mass, at);
            if (fill.Zone.Hazard is Hazard.Alcohol or Hazard.Hydrogen or Hazard.Metal)
                findings.Add(new Finding(CoverageCodes.FuelNeedsMore, Severity.Note, [fill.Zone.Id],
                    $"Zone {Wording.Id(fill.Zone.Id)} has {Word(fill.Zone.Hazard.Value)}: it needs more agent than heptane, or another agent, and no table here says how much; the concentration has to come from tests with that very fuel.", null, null, "common practice, from memory", null), at);
        }
    }

    static void Claim(JudgedCoverage judged, FindingList findings, ZoneFill fill, int at)
    {
        var (zone, limit) = (fill.Zone, judged.Limit(CoverageCodes.FloodingNotClaimable));
        var start = $"Zone {Wording.Id(zone.Id)} is to be flooded, ";
        const string end = ", so that no concentration can be claimed for it; shut it and stop its fans before the agent comes, and say so, or protect it locally";
        if (judged.Layout.Agent.Kind == Agents.AgentKind.Liquid) Add(null, null, "and a liquid makes no concentration");
        else if (zone.Openings is { } openings && openings.SquareMeters > 0) Add(null, null, $"and {Wording.Of(openings.SquareMeters, QuantityKind.Area, judged.Units)} of it do not shut");
        else if (zone.Airflow is null) Add(null, null, "and the document does not say how much air goes through it");
        else if (zone.Openings is null) Add(null, null, "and the document does not say whether openings of it stay open");
        else if (fill.Air is null) Add(null, null, "and its volume, without which the changes of its air are not known, is not given");
        else if (Grading.Of(limit, fill.Air.ChangesPerMinute) is { Severity: > Severity.Pass } found)
        {
            var holds = fill.Air.HalfLife is { } half ? $"; what is in it halves in {judged.Text(half)}" : "";
            Add(new Measure(fill.Air.ChangesPerMinute, null), new Measure(found.Step, null), $"and its air changes {Wording.Number(fill.Air.ChangesPerMinute)} times a minute, limit {Wording.Number(found.Step)}{holds}", found.Severity);
        }

        void Add(Measure? measured, Measure? step, string why, Severity severity = Severity.Fail) =>
            findings.Add(new Finding(CoverageCodes.FloodingNotClaimable, severity, [zone.Id], $"{start}{why}{end}.", measured, step, limit.Source, null), at);
    }

    static void Enough(JudgedCoverage judged, FindingList findings, ZoneFill fill, FloodingNeed need, MassSpan mass, int at)
    {
        var limit = judged.Limit(CoverageCodes.TooLittleAgent);
        var part = mass.Least / need.Mass;
        var (severity, step) = Grading.Of(limit, part, lowerIsWorse: true);
        if (severity == Severity.Pass) return;
        var reached = fill.Exposure is { } exposure ? $", which makes {Wording.Percent(exposure.Least)}" : "";
        var inCase = judged.CaseName(mass.LeastCase);
        findings.Add(new Finding(CoverageCodes.TooLittleAgent, severity, [fill.Zone.Id],
            $"Zone {Wording.Id(fill.Zone.Id)} gets {judged.Text(mass.Least)}{(inCase is null ? "" : $" at {inCase}")}{reached}; at {judged.Text(need.Coldest)} it needs {judged.Text(need.Mass)} for {Wording.Percent(need.Design)} of the volume{(step == 1 ? "" : $", and {Wording.Number(step)} times that is asked")}.",
            new Measure(part, null), new Measure(step, null), limit.Source, null, inCase), at);
    }

    static string Word(Hazard hazard) => hazard switch { Hazard.Alcohol => "an alcohol or a fuel blended with it", Hazard.Hydrogen => "hydrogen", _ => "a metal such as magnesium" };
}

using FlowCalc.Losses;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>Runs whose liquid is fast, and runs whose flow is neither laminar nor turbulent.</summary>
static class RunVelocities
{
    static List<Hit>? High(FlowCase flowCase)
    {
        // The limit is one of liquids: a gas is told where it chokes.
        if (flowCase.Layout.Agent.IsExpanding) return null;
        var limit = flowCase.Limit(FindingCodes.VelocityHigh);
        List<Hit>? hits = null;
        var runs = flowCase.Flow.Runs;
        for (var run = 0; run < runs.Length; run++)
        {
            flowCase.Pass(run);
            var velocity = runs[run].Velocity.MetersPerSecond;
            var (severity, step) = Grading.Of(limit, velocity);
            if (severity != Severity.Pass) (hits ??= []).Add(new Hit(run, flowCase.RunId(run), severity, velocity, velocity, step));
        }
        return hits;
    }

    public static void Find(FlowCase flowCase, FindingList findings) =>
        findings.Add(FindingCodes.VelocityHigh, flowCase.Limit(FindingCodes.VelocityHigh).Source, QuantityKind.Speed, "run", High(flowCase), hit => Sentence(flowCase, hit));

    static string Sentence(FlowCase flowCase, Hit hit) =>
        $"The liquid in {Wording.Id(hit.Id)} runs at {Wording.Of(hit.Measured, QuantityKind.Speed, flowCase.Units)}, limit {Wording.Of(hit.Bound, QuantityKind.Speed, flowCase.Units)}";

    public static void Transition(FlowCase flowCase, FindingList findings)
    {
        List<string>? ids = null;
        var (count, first) = (0, -1);
        var runs = flowCase.Flow.Runs;
        for (var run = 0; run < runs.Length; run++)
        {
            flowCase.Pass(run);
            if (runs[run].Regime != FlowRegime.Transition) continue;
            if (count++ == 0) first = run;
            if (count <= FindingList.MostIds) (ids ??= []).Add(flowCase.RunId(run));
        }
        if (ids is null) return;

        var reynolds = runs[first].Reynolds;
        var others = count > 1 ? $", and so has the flow in {Wording.Count(count - 1, "other run")}" : "";
        findings.Add(new Finding(FindingCodes.TransitionFlow, Severity.Note, [.. ids],
            $"The flow in {Wording.Id(ids[0])} has a Reynolds number of {Wording.Number(reynolds)}, between laminar (up to 2000) and turbulent (from 4000){others}: "
            + "friction there is uncertain by 30 % or more (common practice, no source).",
            new Measure(reynolds, null), new Measure(DarcyFriction.LaminarLimit, null), "no correlation holds between 2000 and 4000; the two sides are joined by a smooth curve", null), first);
    }
}

using FlowCalc.Circuits;
using FlowCalc.Layouts;
using FlowCalc.Limits;

namespace FlowCalc.Findings.Circuits;

/// <summary>Whether pushes fire what they are there for, in how many ways, and whether the first actuator to open cuts others off.</summary>
static class Triggers
{
    public static void Find(JudgedCircuit judged, FindingList findings)
    {
        Nothing(judged, findings);
        InSeries(judged, findings);
        var isRaced = judged.Layout.Application == Application.Motorsport;
        if (isRaced || judged.Layout.Limits.Any(limit => limit.Code == FindingCodes.SingleTrigger)) Ways(judged, findings);
        if (isRaced && judged.Circuit.Source.IsOwn == false)
            findings.Add(new Finding(FindingCodes.NoOwnSource, Severity.Warn, ["circuit/source"], "The source of the circuit is not its own: it dies with the vehicle's electrics.", null, null,
                FindingCodes.All.Single(definition => definition.Code == FindingCodes.NoOwnSource).Source, null), 0);
    }

    static void Nothing(JudgedCircuit judged, FindingList findings)
    {
        List<Hit>? idle = null, unfired = null;
        foreach (var press in judged.Answer.Presses)
            if (press.Fired.IsEmpty) (idle ??= []).Add(new Hit(press.Push, judged.Name(press.Push), Severity.Fail, 0, 0, 1));
        foreach (var (index, actuator) in judged.Circuit.Of<Actuator>())
            if (FiringCurrents.Least(judged.Answer, index) is null) (unfired ??= []).Add(new Hit(index, actuator.Name, Severity.Fail, 0, 0, 1));
        findings.Add(FindingCodes.NothingFires, "circuit law", null, "push", idle, hit => $"{Wording.Id(hit.Id)} fires nothing when the circuit is armed: no actuator gets a hundredth of its all-fire current");
        findings.Add(FindingCodes.NothingFires, "circuit law", null, "actuator", unfired, hit => $"No push fires {Wording.Id(hit.Id)} when the circuit is armed");
    }

    static void InSeries(JudgedCircuit judged, FindingList findings)
    {
        List<Hit>? hits = null;
        foreach (var (index, actuator) in judged.Circuit.Of<Actuator>())
        {
            var presses = judged.Answer.Presses.Count(press => press.CutOff.Contains(index));
            if (presses > 0) (hits ??= []).Add(new Hit(index, actuator.Name, Severity.Warn, presses, presses, 0));
        }
        findings.Add(FindingCodes.FiresInSeries, DefaultLimits.CommonPractice, null, "actuator", hits, hit =>
            $"{Wording.Id(hit.Id)} no longer gets its all-fire current once another that is fired with it has opened: in series each must carry the pulse before the first opens, in parallel none need");
    }

    static void Ways(JudgedCircuit judged, FindingList findings)
    {
        var limit = judged.Limit(FindingCodes.SingleTrigger);
        List<Hit>? hits = null;
        foreach (var (index, actuator) in judged.Circuit.Of<Actuator>())
        {
            var ways = judged.Answer.Presses.Count(press => Math.Abs(press.Currents.Parts[index]) >= actuator.AllFire.Amperes);
            var (severity, step) = Grading.Of(limit, ways, lowerIsWorse: true);
            if (severity != Severity.Pass) (hits ??= []).Add(new Hit(index, actuator.Name, severity, -ways, ways, step));
        }
        findings.Add(FindingCodes.SingleTrigger, limit.Source, null, "actuator", hits, hit =>
            $"{Wording.Count((int)hit.Measured, "push")} {(hit.Measured == 1 ? "fires" : "fire")} {Wording.Id(hit.Id)}, limit {Wording.Number(hit.Bound)}: one for the driver and one that is reached from outside, in parallel");
    }
}

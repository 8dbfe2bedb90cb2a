using System.Collections.Immutable;
using FlowCalc.Circuits;
using FlowCalc.Limits;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Circuits;

/// <summary>Single faults that fire something, or that keep something from firing unseen.</summary>
static class FaultCases
{
    public static void Find(JudgedCircuit judged, FindingList findings)
    {
        // What may fire without a fault is told of as that.
        var isSound = !judged.Answer.TestCurrents.Any(test => test.Sound >= ((Actuator)judged.Circuit.Parts[test.Actuator]).MayFire.Amperes);
        List<Hit>? fires = null;
        for (var at = 0; at < judged.Answer.Faults.Length; at++)
            if (isSound && judged.Answer.Faults[at] is { FiresUnasked: true } fault)
                (fires ??= []).Add(new Hit(at, Place(judged, fault.Fault), Severity.Fail, fault.Unasked, fault.Unasked, 1));
        findings.Add(FindingCodes.FaultFires, "circuit law", null, "fault", fires, hit =>
            $"{judged.Words(judged.Answer.Faults[hit.Item].Fault)}: an actuator gets {Wording.Number(hit.Measured)} times the current that may fire it where nothing is meant to");
        AddUnseen(judged, findings);
    }

    // One finding of all of them: each is a place to look at, and together they say what the lamp proves.
    static void AddUnseen(JudgedCircuit judged, FindingList findings)
    {
        var unseen = judged.Answer.Faults.Where(fault => fault is { KeepsFromFiring: true, IsShown: false }).ToArray();
        if (unseen.Length == 0) return;
        var stopping = judged.Answer.Faults.Count(fault => fault.KeepsFromFiring);
        ImmutableArray<string> where = [.. unseen.Select(fault => Place(judged, fault.Fault)).Distinct().Take(FindingList.MostIds)];
        findings.Add(new Finding(FindingCodes.FaultUnseen, Severity.Warn, where,
            $"Of {Wording.Count(stopping, "single fault")} that keep an actuator from firing no lamp shows {Wording.Number(unseen.Length)}: {Wording.Ids([.. unseen.Select(fault => judged.Words(fault.Fault))])}; "
            + "a loaded test into a dummy resistor, with the actuator unplugged, shows what a lamp cannot.",
            new Measure(unseen.Length, null), new Measure(0, null), DefaultLimits.CommonPractice, null), -1);
    }

    static string Place(JudgedCircuit judged, CircuitFault fault) => judged.Circuit.PlaceOf(fault);
}

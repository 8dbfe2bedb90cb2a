using FlowCalc.Circuits;
using FlowCalc.Findings.Cures;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Circuits;

/// <summary>Looks for changes that clear what was found, by solving the changed circuit.</summary>
static class CircuitCures
{
    // Changes that one answer tries at most, so that work follows from the size of the circuit and not from a clock.
    const int MostTrials = 120;

    /// <summary>Puts cures to the findings that a thicker wire or a larger resistor may clear.</summary>
    public static void Add(JudgedCircuit judged, FindingList findings, CancellationToken cancellationToken)
    {
        var left = MostTrials;
        for (var at = 0; at < findings.Entries.Count; at++)
        {
            var entry = findings.Entries[at];
            if (entry.IsMany || entry.Finding.Severity < Severity.Warn || Ladders(judged.Circuit, entry.Finding.Code) is not { } ladders) continue;
            var (cure, tried) = Best(judged, findings, entry, ladders, ref left, cancellationToken);
            if (cure is not null) findings.Replace(at, entry.Finding with { Cure = cure });
            else if (tried > 0) findings.Replace(at, entry.Finding with { Message = CureWords.Without(entry.Finding.Message, $"{Wording.Count(tried, "change")} tried") });
        }
    }

    static IEnumerable<IEnumerable<CircuitChange>>? Ladders(Circuit circuit, string code) => code switch
    {
        FindingCodes.LowFiringCurrent or FindingCodes.LowCoilVoltage or FindingCodes.WireDrop or FindingCodes.FiringEnergyLow or FindingCodes.FiringPulseShort => CircuitChanges.Wires(circuit),
        FindingCodes.TestCurrentHigh => circuit.Of<Lamp>().Select(one => CircuitChanges.Lamp(circuit, one.Index)),
        _ => null,
    };

    static (Cure? Cure, int Tried) Best(JudgedCircuit judged, FindingList before, FoundEntry entry, IEnumerable<IEnumerable<CircuitChange>> ladders, ref int left, CancellationToken cancellationToken)
    {
        (CircuitChange Change, JudgedCircuit Judged, FindingList Found)? best = null;
        var (aim, tried) = (new Aim(entry, before), 0);
        foreach (var ladder in ladders)
            foreach (var change in ladder)
            {
                // A ladder only grows dearer.
                if (left == 0 || (best is { } found && change.Cost >= found.Change.Cost)) break;
                (left, tried) = (left - 1, tried + 1);
                var after = new JudgedCircuit(judged.Layout, change.Changed, CircuitAnalysis.Of(change.Changed, cancellationToken), judged.Units, judged.Limits);
                var list = CircuitRules.Find(after);
                if (!aim.IsClearedBy(list)) continue;
                best = (change, after, list);
                break;
            }
        return best is { } one ? (Cure(judged, one.Judged, entry, one.Change, one.Found), tried) : (null, tried);
    }

    static Cure Cure(JudgedCircuit judged, JudgedCircuit changed, FoundEntry entry, CircuitChange change, FindingList after)
    {
        var (code, kind) = (entry.Finding.Code, entry.Finding.Measured!.Value.Kind);
        var (from, to) = (entry.Finding.Measured.Value.Si, Measured(changed, code, entry.Item));
        string Text(double value) => kind is { } known ? judged.Text(value, known) : Wording.Percent(value);
        var outcome = new CureOutcome(after.Verdict, after.Count(Severity.Fail), after.Count(Severity.Warn), null, null);
        return new($"With {change.Words}, {What(code)} of {judged.Id(entry.Item)} goes from {Text(from)} to {Text(to)}{CureWords.Left(outcome)}.",
            change.Changes, new Measure(from, kind), new Measure(to, kind), true, outcome);
    }

    static string What(string code) => code switch
    {
        FindingCodes.LowFiringCurrent => "the least firing current",
        FindingCodes.LowCoilVoltage => "the least voltage",
        FindingCodes.WireDrop => "the part lost in wires",
        FindingCodes.FiringEnergyLow => "the energy",
        FindingCodes.FiringPulseShort => "the time at the all-fire current",
        _ => "the largest current untouched",
    };

    static double Measured(JudgedCircuit judged, string code, int item) => code switch
    {
        FindingCodes.LowFiringCurrent => FiringCurrents.Least(judged.Answer, item)!.Value.Amperes,
        FindingCodes.LowCoilVoltage => FiringCurrents.Least(judged.Answer, item)!.Value.Amperes * judged.Circuit.Parts[item].Resistance.Ohms,
        FindingCodes.WireDrop => judged.Answer.Presses.Single(press => press.Push == item).Shares!.Wires,
        FindingCodes.FiringEnergyLow => CapacitorPulses.Least(judged.Answer, item)!.Value.Energy,
        FindingCodes.FiringPulseShort => CapacitorPulses.Least(judged.Answer, item)!.Value.Above,
        _ => judged.Answer.TestCurrents.Single(test => test.Actuator == item).Current,
    };
}

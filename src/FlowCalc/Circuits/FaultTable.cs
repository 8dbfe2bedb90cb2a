using System.Collections.Immutable;

namespace FlowCalc.Circuits;

/// <summary>Every single fault of a circuit: what it keeps from firing, what it fires, and whether a lamp shows it.</summary>
static class FaultTable
{
    public static ImmutableArray<FaultCase> Of(StateTable table, ImmutableArray<FiringPress> presses) => [.. Faults(table.Circuit).Select(fault => Case(table, presses, fault))];

    static IEnumerable<CircuitFault> Faults(Circuit circuit)
    {
        for (var at = 0; at < circuit.Parts.Length; at++)
            if (circuit.Parts[at] is Wire or Connector or Fuse or Actuator) yield return new(CircuitFaultKind.Open, at);
        if (circuit.Chassis is { } chassis)
            for (var node = 0; node < circuit.Nodes.Length; node++)
                if (node != chassis) yield return new(CircuitFaultKind.Chassis, node);
        for (var at = 0; at < circuit.Parts.Length; at++)
            if (circuit.Parts[at] is Connector or Switch or Push) yield return new(CircuitFaultKind.Corroded, at);
    }

    static FaultCase Case(StateTable table, ImmutableArray<FiringPress> presses, CircuitFault fault)
    {
        var circuit = table.Circuit;
        double? margin = null;
        foreach (var press in presses)
        {
            if (press.Fired.IsEmpty) continue;
            var with = table.Solve(new CircuitSetting(CircuitState.Armed, press.Push, IsFresh: false, fault));
            foreach (var at in press.Fired)
            {
                var reached = Math.Abs(with.Parts[at]) / ((Actuator)circuit.Parts[at]).AllFire.Amperes;
                if (margin is null || !(reached >= margin)) margin = reached;
            }
        }
        var (isShown, unasked, source) = (false, 0.0, 0.0);
        foreach (var row in table.Rows)
        {
            var setting = new CircuitSetting(row.State, row.Push, IsFresh: true, fault);
            var (with, without) = (table.Solve(setting), table.Solve(setting with { Fault = null }));
            source = Math.Max(source, Math.Abs(with.Source));
            if (row.IsFiring) continue;
            foreach (var (at, lamp) in circuit.Of<Lamp>()) isShown |= IsLit(lamp, with.Parts[at]) != IsLit(lamp, without.Parts[at]);
            foreach (var (at, actuator) in circuit.Of<Actuator>()) unasked = Math.Max(unasked, Math.Abs(with.Parts[at]) / actuator.MayFire.Amperes);
        }
        return new(fault, margin, isShown, unasked, source);
    }

    static bool IsLit(Lamp lamp, double current) => Math.Abs(current) >= lamp.LightsAt.Amperes;
}

using System.Collections.Immutable;
using FlowCalc.Stock;

namespace FlowCalc.Circuits;

/// <summary>Works out what a circuit does in every state, with every press and with every single fault.</summary>
public static class CircuitAnalysis
{
    /// <summary>Most test current that any actuator may get, A, and the part of its no-fire current.</summary>
    /// <remarks>Source: NASA-STD-8719.24, annex 13.8.1.1.1 (second-hand): a tenth of the no-fire energy or 50 mA, the less; a tenth of the no-fire current is stricter.</remarks>
    public const double MostTestCurrent = 0.05, MostTestPart = 0.1;

    // Below this part of its all-fire current an actuator is not what a push is there for.
    const double Meant = 0.01;

    /// <summary>Analyses a circuit.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="cancellationToken">Asked before every solve.</param>
    /// <returns>The answer. The same circuit gives the same answer; the order of its parts moves last digits alone.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static CircuitResult Of(Circuit circuit, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        var table = new StateTable(circuit, cancellationToken);
        var presses = table.Rows.Where(row => row.IsFiring).Select(row => Press(table, row.Push)).ToImmutableArray();
        return new(
            table.Rows, presses, [.. circuit.Of<Actuator>().Select(one => Test(table, one.Index, one.Part))], [.. circuit.Of<Fuse>().Select(one => Load(table, one.Index, one.Part))],
            circuit.Source.Kind == SourceKind.Capacitor ? CapacitorDischarge.Of(table, presses) : [], FaultTable.Of(table, presses));
    }

    static FiringPress Press(StateTable table, int push)
    {
        var (circuit, setting) = (table.Circuit, new CircuitSetting(CircuitState.Armed, push, IsFresh: false));
        var currents = table.Solve(setting);
        ImmutableArray<int> fired = [.. circuit.Of<Actuator>().Where(one => Math.Abs(currents.Parts[one.Index]) > Meant * one.Part.AllFire.Amperes).Select(one => one.Index)];
        HashSet<int> cutOff = [];
        foreach (var opened in fired)
        {
            if (!((Actuator)circuit.Parts[opened]).IsPyrotechnic || fired.Length < 2) continue;
            var rest = table.Solve(setting with { Fault = new CircuitFault(CircuitFaultKind.Open, opened) });
            foreach (var other in fired)
                if (other != opened && Math.Abs(rest.Parts[other]) < ((Actuator)circuit.Parts[other]).AllFire.Amperes) cutOff.Add(other);
        }
        return new(push, currents, Shares(circuit, currents), fired, [.. cutOff.Order()]);
    }

    static LossShares? Shares(Circuit circuit, CircuitCurrents currents)
    {
        var given = currents.SourceVoltage * currents.Source;
        if (!(given > 0)) return null;
        double wires = 0, contacts = 0, actuators = 0, others = 0;
        for (var at = 0; at < circuit.Parts.Length; at++)
        {
            var current = currents.Parts[at];
            // A diode takes its forward voltage besides what its resistor takes.
            var forward = circuit.Parts[at] is Lamp { ForwardVoltage: { } drop } ? drop.Volts * current : 0;
            var power = current * current * currents.Resistances[at] + forward;
            switch (circuit.Parts[at])
            {
                case Wire: wires += power; break;
                case Actuator: actuators += power; break;
                case Lamp or Resistor: others += power; break;
                default: contacts += power; break;
            }
        }
        return new(currents.Source * currents.Source * currents.SourceResistance / given, wires / given, contacts / given, actuators / given, others / given);
    }

    static TestCurrent Test(StateTable table, int index, Actuator actuator)
    {
        var limit = actuator.NoFire is { } noFire ? Math.Min(MostTestPart * noFire.Amperes, MostTestCurrent) : MostTestCurrent;
        var worst = new TestCurrent(index, 0, 0, limit, CircuitState.Off, -1, -1);
        foreach (var row in table.Rows)
        {
            if (row.IsFiring) continue;
            foreach (var lamp in (IEnumerable<int>)[-1, .. table.Circuit.Of<Lamp>().Select(one => one.Index)])
            {
                var current = Math.Abs(table.Solve(new CircuitSetting(row.State, row.Push, IsFresh: true, WorstLamp: lamp)).Parts[index]);
                if (lamp < 0 && !(current <= worst.Sound)) worst = worst with { Sound = current };
                if (!(current <= worst.Current)) worst = worst with { Current = current, State = row.State, Push = row.Push, Lamp = lamp };
            }
        }
        return worst;
    }

    static FuseLoad Load(StateTable table, int index, Fuse fuse)
    {
        var (push, most) = (-1, 0.0);
        foreach (var row in table.Rows)
        {
            if (!row.IsFiring) continue;
            var current = Math.Abs(table.Solve(new CircuitSetting(row.State, row.Push, IsFresh: true)).Parts[index]);
            if (!(current <= most)) (push, most) = (row.Push, current);
        }
        var pulse = table.Circuit.Of<Actuator>().Select(one => one.Part.Pulse?.Seconds).Max();
        var part = most / fuse.Rating.Amperes;
        return new(index, push, most, pulse, fuse.IsBlade ? FuseTimes.Holds(part) : null, fuse.IsBlade ? FuseTimes.Opens(part) : null);
    }
}

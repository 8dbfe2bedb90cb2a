using System.Collections.Immutable;

namespace FlowCalc.Circuits;

/// <summary>The network of a circuit in one setting: its nodes, and what conducts or may.</summary>
sealed class SetNetwork
{
    readonly Circuit circuit;
    readonly int[] node;
    readonly double[] resistances;
    readonly bool[] isClosed;
    readonly double[] forward;
    readonly double voltage, inner;

    /// <summary>Makes the network.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="setting">How it stands.</param>
    /// <param name="voltage">Voltage of its source, V; null for that of the setting.</param>
    public SetNetwork(Circuit circuit, in CircuitSetting setting, double? voltage)
    {
        this.circuit = circuit;
        this.voltage = voltage ?? (setting.IsFresh ? circuit.Source.HighestVoltage : circuit.Source.LowestVoltage).Volts;
        inner = (setting.IsFresh ? circuit.Source.FreshResistance : circuit.Source.ColdResistance).Ohms;
        node = [.. Enumerable.Range(0, circuit.Nodes.Length)];
        if (setting.Fault is { Kind: CircuitFaultKind.Chassis } touch) node[touch.Place] = circuit.Chassis ?? throw new ArgumentException("The circuit has no chassis.", nameof(setting));
        var count = circuit.Parts.Length;
        (resistances, isClosed, forward) = (new double[count], new bool[count], new double[count]);
        for (var at = 0; at < count; at++)
        {
            var part = circuit.Parts[at];
            var isWorst = setting.WorstLamp == at;
            resistances[at] = part.Resistance.Ohms * (isWorst && part is Lamp worst ? 1 - worst.Tolerance : 1);
            if (setting.Fault is { Kind: CircuitFaultKind.Corroded } joint && joint.Place == at) resistances[at] += circuit.Corrosion.Ohms;
            isClosed[at] = IsClosed(part, at, setting);
            forward[at] = !isWorst && part is Lamp { ForwardVoltage: { } drop } ? drop.Volts : 0;
        }
        Diodes = [.. Enumerable.Range(0, count).Where(at => isClosed[at] && forward[at] > 0)];
    }

    /// <summary>Places of the diodes among the parts.</summary>
    public int[] Diodes { get; }

    /// <summary>Solves the network.</summary>
    /// <param name="lit">For every part whether, of a diode, it conducts.</param>
    /// <param name="blocking">Resistance of a diode that does not, Ω; null where it lets nothing pass.</param>
    public NetworkCurrents? Solve(bool[] lit, double? blocking)
    {
        var branches = ImmutableArray.CreateBuilder<Branch>(resistances.Length + 1);
        branches.Add(new Branch(node[circuit.Source.Minus], node[circuit.Source.Plus], inner, voltage));
        for (var at = 0; at < resistances.Length; at++)
            if (Through(at, lit, blocking) is { } resistance)
                branches.Add(new Branch(node[circuit.Parts[at].From], node[circuit.Parts[at].To], resistance, -forward[at]));
        var solved = ResistiveNetwork.Solve(circuit.Nodes.Length, branches.DrainToImmutable());
        return solved is null ? null : solved with { Currents = Spread(solved.Currents, lit, blocking) };
    }

    /// <summary>By how much the voltage over a diode is over its forward voltage, V.</summary>
    public double OverForward(NetworkCurrents solved, int part) =>
        solved.Potentials[node[circuit.Parts[part].From]] - solved.Potentials[node[circuit.Parts[part].To]] - forward[part];

    public CircuitCurrents Answer(NetworkCurrents solved, bool[] lit) =>
        new(solved.Currents[1..], solved.Currents[0], voltage, inner, [.. resistances], [.. lit]);

    public CircuitCurrents NoAnswer(bool[] lit) =>
        new([.. resistances.Select(_ => double.NaN)], double.NaN, voltage, inner, [.. resistances], [.. lit]);

    // The source first, then every part, those that do not conduct with no current.
    ImmutableArray<double> Spread(ImmutableArray<double> currents, bool[] lit, double? blocking)
    {
        var spread = ImmutableArray.CreateBuilder<double>(resistances.Length + 1);
        spread.Add(currents[0]);
        var next = 1;
        for (var at = 0; at < resistances.Length; at++) spread.Add(Through(at, lit, blocking) is null ? 0 : currents[next++]);
        return spread.MoveToImmutable();
    }

    double? Through(int at, bool[] lit, double? blocking) => !isClosed[at] ? null : forward[at] > 0 && !lit[at] ? blocking : resistances[at];

    static bool IsClosed(CircuitPart part, int at, in CircuitSetting setting)
    {
        if (setting.Fault is { Kind: CircuitFaultKind.Open } open && open.Place == at) return false;
        return part switch
        {
            Switch contact => contact.ClosedIn.Contains(setting.State),
            Push => setting.Pressed == at,
            _ => true,
        };
    }
}

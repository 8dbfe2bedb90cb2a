namespace FlowCalc.Circuits;

/// <summary>Solves a circuit in one setting: which parts conduct, then the network of these.</summary>
public static class CircuitSolver
{
    // What a diode that blocks lets pass while it is decided which conduct; the answer is then worked out without it, Ω.
    const double Blocking = 1e8;

    const double HairVolt = 1e-9;

    /// <summary>Solves a circuit.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="setting">How it stands.</param>
    /// <returns>The currents.</returns>
    /// <remarks>
    /// A diode is straight in two pieces: from its forward voltage on with the lamp's resistance, below with one that blocks. Resistances being over 0, there is one answer, and turning the
    /// first diode that is wrong comes to it (K. G. Murty, Linear Algebra Appl. 7 (1974) 65–108, the rule of the least index, from memory).
    /// </remarks>
    public static CircuitCurrents Solve(Circuit circuit, in CircuitSetting setting)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        var lit = new bool[circuit.Parts.Length];
        foreach (var (index, _) in circuit.Of<Lamp>()) lit[index] = true;
        return Solve(circuit, setting, lit, isSettled: false, null);
    }

    /// <summary>Solves a circuit, beginning with the diodes as they stand in a setting like it.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="setting">How it stands.</param>
    /// <param name="like">The currents in that other setting.</param>
    internal static CircuitCurrents SolveFrom(Circuit circuit, in CircuitSetting setting, CircuitCurrents like) => Solve(circuit, setting, [.. like.Lit], isSettled: false, null);

    /// <summary>Solves a circuit with the diodes as they are and another voltage of its source.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="setting">How it stands.</param>
    /// <param name="at">Which diodes conduct.</param>
    /// <param name="voltage">Voltage of the source without load, V.</param>
    internal static CircuitCurrents SolveAt(Circuit circuit, in CircuitSetting setting, CircuitCurrents at, double voltage) =>
        Solve(circuit, setting, [.. at.Lit], isSettled: true, voltage);

    static CircuitCurrents Solve(Circuit circuit, in CircuitSetting setting, bool[] lit, bool isSettled, double? voltage)
    {
        var network = new SetNetwork(circuit, setting, voltage);
        // No rule of turning needs more turns than there are ways for the diodes to stand.
        var turns = 1 << Math.Min(12, circuit.Parts.Count(part => part is Lamp) + 1);
        for (var turn = 0; turn < turns; turn++)
        {
            var isAllLit = Array.TrueForAll(network.Diodes, diode => lit[diode]);
            var solved = network.Solve(lit, isSettled ? null : Blocking);
            if (solved is null) break;
            if (isSettled || FirstWrong(network, solved, lit) is not { } wrong)
                return isSettled || isAllLit ? network.Answer(solved, lit) : network.Solve(lit, null) is { } settled ? network.Answer(settled, lit) : network.NoAnswer(lit);
            lit[wrong] = !lit[wrong];
        }
        return network.NoAnswer(lit);
    }

    static int? FirstWrong(SetNetwork network, NetworkCurrents solved, bool[] lit)
    {
        foreach (var diode in network.Diodes)
        {
            var over = network.OverForward(solved, diode);
            if (lit[diode] ? over < -HairVolt : over > HairVolt) return diode;
        }
        return null;
    }
}

using System.Collections.Immutable;

namespace FlowCalc.Circuits;

/// <summary>The state table of a circuit, with every solve kept that it asks for.</summary>
sealed class StateTable
{
    readonly Dictionary<CircuitSetting, CircuitCurrents> solved = [];
    readonly CancellationToken cancellation;

    public StateTable(Circuit circuit, CancellationToken cancellation)
    {
        (Circuit, this.cancellation) = (circuit, cancellation);
        Rows = [.. Settings().Select(Row)];
    }

    public Circuit Circuit { get; }

    /// <summary>Every state with nothing pressed and with each push.</summary>
    public ImmutableArray<StateRow> Rows { get; }

    /// <summary>The currents in a setting.</summary>
    public CircuitCurrents Solve(in CircuitSetting setting)
    {
        if (solved.TryGetValue(setting, out var known)) return known;
        cancellation.ThrowIfCancellationRequested();
        var sound = setting with { Fault = null, WorstLamp = -1 };
        var currents = solved.TryGetValue(sound, out var like) ? CircuitSolver.SolveFrom(Circuit, setting, like) : CircuitSolver.Solve(Circuit, setting);
        // Faults are asked for once, and would only fill the memory.
        if (setting.Fault is null) solved.Add(setting, currents);
        return currents;
    }

    IEnumerable<(CircuitState State, int Push)> Settings()
    {
        foreach (var state in Enum.GetValues<CircuitState>())
        {
            yield return (state, -1);
            foreach (var (index, _) in Circuit.Of<Push>()) yield return (state, index);
        }
    }

    StateRow Row((CircuitState State, int Push) at)
    {
        var low = Solve(new CircuitSetting(at.State, at.Push, IsFresh: false));
        var high = Solve(new CircuitSetting(at.State, at.Push, IsFresh: true));
        CurrentRange Range(int part) => new(part, Math.Abs(low.Parts[part]), Math.Abs(high.Parts[part]));
        return new(
            at.State, at.Push, at is { State: CircuitState.Armed, Push: >= 0 } && ((Push)Circuit.Parts[at.Push]).IsForFiring, low.Source, high.Source,
            [.. Circuit.Of<Actuator>().Select(one => Range(one.Index))], [.. Circuit.Of<Lamp>().Select(one => Range(one.Index))]);
    }
}

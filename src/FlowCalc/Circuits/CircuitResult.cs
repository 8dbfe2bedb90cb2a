using System.Collections.Immutable;

namespace FlowCalc.Circuits;

/// <summary>What a circuit does.</summary>
/// <param name="Rows">The state table: every state with nothing pressed and with each push.</param>
/// <param name="Presses">Every push for firing in the armed circuit.</param>
/// <param name="TestCurrents">One entry an actuator.</param>
/// <param name="Fuses">One entry a fuse.</param>
/// <param name="Pulses">Of a capacitor, one entry a push and actuator that it is there to fire; empty of every other source.</param>
/// <param name="Faults">Every fault that was tried.</param>
public sealed record CircuitResult(
    ImmutableArray<StateRow> Rows, ImmutableArray<FiringPress> Presses, ImmutableArray<TestCurrent> TestCurrents, ImmutableArray<FuseLoad> Fuses,
    ImmutableArray<CapacitorPulse> Pulses, ImmutableArray<FaultCase> Faults)
{
    /// <summary>What rounding leaves in a part that carries nothing, A.</summary>
    public const double Dead = 1e-9;

    /// <summary>Whether every current of the source is a number: resistances that are too far apart may leave none.</summary>
    public bool IsFinite => Rows.All(row => double.IsFinite(row.SourceLowest + row.SourceHighest));
}

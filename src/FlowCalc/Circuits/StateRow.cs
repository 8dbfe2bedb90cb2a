using System.Collections.Immutable;

namespace FlowCalc.Circuits;

/// <summary>What a circuit does in one state with one push pressed, or none.</summary>
/// <param name="State">How its switches are set.</param>
/// <param name="Push">Index of the part that is pressed; −1 for none.</param>
/// <param name="IsFiring">Whether it is meant to fire: armed, with a push for firing.</param>
/// <param name="SourceLowest">Current of the source at its weakest, A.</param>
/// <param name="SourceHighest">Current of the source at its strongest, A.</param>
/// <param name="Actuators">The actuators, in order.</param>
/// <param name="Lamps">The lamps, in order.</param>
public sealed record StateRow(
    CircuitState State, int Push, bool IsFiring, double SourceLowest, double SourceHighest, ImmutableArray<CurrentRange> Actuators, ImmutableArray<CurrentRange> Lamps);

using System.Collections.Immutable;

namespace FlowCalc.Circuits;

/// <summary>What a push for firing does in the armed circuit, with the source at its weakest.</summary>
/// <param name="Push">Index of the push.</param>
/// <param name="Currents">The currents.</param>
/// <param name="Shares">Where what the source gives goes; null where it gives nothing.</param>
/// <param name="Fired">The actuators that it is there to fire: those through which more than a hundredth of their all-fire current passes.</param>
/// <param name="CutOff">Those of them that no longer get their all-fire current once one of the others has opened.</param>
public sealed record FiringPress(int Push, CircuitCurrents Currents, LossShares? Shares, ImmutableArray<int> Fired, ImmutableArray<int> CutOff);

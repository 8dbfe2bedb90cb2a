using System.Collections.Immutable;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Circuits;

/// <summary>What a push for firing does in the armed circuit, with the source at its weakest.</summary>
/// <param name="Push">Name of the push.</param>
/// <param name="SourceCurrent">Current of the source.</param>
/// <param name="Losses">Where what the source gives goes; null where it gives nothing.</param>
/// <param name="Actuators">The actuators that it is there to fire.</param>
/// <param name="Drops">The voltage over every wire that carries current.</param>
public sealed record PressAnswer(string Push, Quantity SourceCurrent, CircuitLossesAnswer? Losses, ImmutableArray<FiredAnswer> Actuators, ImmutableArray<WireDropAnswer> Drops);

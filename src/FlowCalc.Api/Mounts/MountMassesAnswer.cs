using System.Collections.Immutable;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Mounts;

/// <summary>What hangs on the bolts.</summary>
/// <param name="Bottle">The full bottle with its valve.</param>
/// <param name="Agent">Of it the agent.</param>
/// <param name="Cushion">Of it the gas of the cushion; 0 where the document states the full mass.</param>
/// <param name="Added">What hangs on the bolts besides.</param>
/// <param name="Total">All together.</param>
/// <param name="Centres">Centre of mass of all, x, y and z in the mount's axes; two where the liquid may lie at either end of the bottle.</param>
public sealed record MountMassesAnswer(Quantity Bottle, Quantity Agent, Quantity Cushion, Quantity Added, Quantity Total, ImmutableArray<ImmutableArray<Quantity>> Centres);

using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Mounts;

/// <summary>What hangs on the bolts of a mount.</summary>
/// <param name="Bottle">The full bottle with its valve.</param>
/// <param name="Agent">Of it the agent.</param>
/// <param name="Cushion">Of it the gas of the cushion; zero where the full mass is stated.</param>
/// <param name="Added">What hangs on the bolts besides.</param>
/// <param name="Centres">Centres of mass of all, in the mount's axes: one, or two with the liquid at either end of the bottle.</param>
public sealed record MountMasses(Mass Bottle, Mass Agent, Mass Cushion, Mass Added, ImmutableArray<Layouts.Place> Centres)
{
    /// <summary>All that hangs on the bolts.</summary>
    public Mass Total => Bottle + Added;
}

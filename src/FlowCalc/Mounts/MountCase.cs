using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Mounts;

/// <summary>A load case of a mount, worked out.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Acceleration">The acceleration in g.</param>
/// <param name="Direction">Where the mass is thrown, in the layout's axes, of length 1; null for any direction.</param>
/// <param name="Force">Force on all that hangs on the bolts.</param>
/// <param name="Source">Whose load it is.</param>
/// <param name="Bolts">What each bolt bears; empty where the bolts cannot take every moment.</param>
/// <param name="Governing">The check nearest to or furthest over what is borne; null where nothing could be checked.</param>
public sealed record MountCase(string Name, double Acceleration, Direction? Direction, Force Force, string Source, ImmutableArray<BoltLoad> Bolts, CheckResult? Governing);

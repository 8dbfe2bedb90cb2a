using System.Collections.Immutable;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Mounts;

/// <summary>A load case.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Acceleration">The acceleration in g.</param>
/// <param name="Direction">Where the mass is thrown, in the layout's axes; null for any direction, whose loads are the greatest of each by itself.</param>
/// <param name="Force">Force on all that hangs on the bolts.</param>
/// <param name="Source">Whose load it is.</param>
/// <param name="Bolts">What each bolt bears; empty where the bolts stand in one line.</param>
/// <param name="Governing">The check nearest to or furthest over what is borne in this case.</param>
public sealed record LoadCaseAnswer(
    string Name, double Acceleration, ImmutableArray<double>? Direction, Quantity Force, string Source, ImmutableArray<BoltLoadAnswer> Bolts, MountCheckAnswer? Governing);

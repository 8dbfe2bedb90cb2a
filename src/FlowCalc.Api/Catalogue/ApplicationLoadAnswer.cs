using System.Collections.Immutable;

namespace FlowCalc.Api.Catalogue;

/// <summary>A load case of the bottle's mount.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Acceleration">Acceleration in g.</param>
/// <param name="Direction">Its direction; null for any.</param>
/// <param name="Source">Whose it is.</param>
public sealed record ApplicationLoadAnswer(string Name, double Acceleration, ImmutableArray<double>? Direction, string Source);

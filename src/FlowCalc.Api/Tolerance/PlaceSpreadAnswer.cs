using System.Collections.Immutable;

namespace FlowCalc.Api.Tolerance;

/// <summary>How what a nozzle or a zone gets is spread.</summary>
/// <param name="Id">Its id.</param>
/// <param name="WantedShare">Part that it should get, 0 to 1: the design's, whatever a sample's K-factors.</param>
/// <param name="Figures">The figures.</param>
public sealed record PlaceSpreadAnswer(string Id, double WantedShare, ImmutableArray<FigureAnswer> Figures);

using System.Collections.Immutable;

namespace FlowCalc.Studies.Tolerance;

/// <summary>The spread of what a nozzle or a zone gets.</summary>
/// <param name="Id">Its id.</param>
/// <param name="WantedShare">Part that it should get, 0 to 1.</param>
/// <param name="Figures">The figures.</param>
public sealed record PlaceSpread(string Id, double WantedShare, ImmutableArray<FigureSpread> Figures);

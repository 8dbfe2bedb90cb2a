using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>A fitting at its place in a run.</summary>
/// <param name="Fitting">The fitting.</param>
/// <param name="At">Where along the developed centre line from the run's start; null where it does not matter.</param>
/// <param name="Count">Equal fittings, 1 or more.</param>
public sealed record PlacedFitting(Fitting Fitting, Length? At, int Count);

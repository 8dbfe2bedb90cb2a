using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>A part of a run that passes something hot.</summary>
/// <param name="From">Where it begins, along the developed centre line from the run's start.</param>
/// <param name="To">Where it ends; after <paramref name="From"/>.</param>
/// <param name="Temperature">How hot the tube can become there; null where not given.</param>
/// <param name="IsSleeved">Whether a heat sleeve goes over it.</param>
public sealed record HotPlace(Length From, Length To, Temperature? Temperature, bool IsSleeved);

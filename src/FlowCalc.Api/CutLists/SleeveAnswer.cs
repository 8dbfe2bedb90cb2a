using FlowCalc.Api.Answers;

namespace FlowCalc.Api.CutLists;

/// <summary>A sleeve over a hot part of a run.</summary>
/// <param name="From">Where it begins, along the run's centre line from its start: 50 mm before the hot part, as far as the run goes.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Length">Its length.</param>
/// <param name="InsideDiameter">Least inside diameter: 1 mm over the tube; more where the tube has a skin.</param>
public sealed record SleeveAnswer(Quantity From, Quantity To, Quantity Length, Quantity InsideDiameter);

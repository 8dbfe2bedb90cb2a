using System.Collections.Immutable;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.CutLists;

/// <summary>What is cut, bent, clipped and sleeved for a run.</summary>
/// <param name="Id">Id of the run.</param>
/// <param name="From">Id of the point at its start.</param>
/// <param name="To">Id of the point at its end.</param>
/// <param name="Tube">Name of its tube, or its bore where the tube has none.</param>
/// <param name="Length">Developed length of its centre line, from point to point, with the arcs.</param>
/// <param name="Pieces">Its pieces from its start: one, and one more for every fitting with a place; none for a run of no length.</param>
/// <param name="UnplacedBends">Bends of a run that is given by its length: counted in the length, without a place to mark.</param>
/// <param name="UnplacedFittings">Fittings without a place, at which the tube is not cut here.</param>
/// <param name="Clips">Its clips.</param>
/// <param name="Sleeves">Its sleeves.</param>
public sealed record RunCutAnswer(
    string Id,
    string From,
    string To,
    string Tube,
    Quantity Length,
    ImmutableArray<PieceAnswer> Pieces,
    long UnplacedBends,
    long UnplacedFittings,
    ClipsAnswer Clips,
    ImmutableArray<SleeveAnswer> Sleeves);

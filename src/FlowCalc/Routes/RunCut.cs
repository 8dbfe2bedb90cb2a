using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Routes;

/// <summary>What is cut, bent, clipped and sleeved for a run.</summary>
/// <param name="Run">Index of the run in the layout.</param>
/// <param name="Length">Developed length of its centre line, from point to point.</param>
/// <param name="Pieces">Its pieces from its start; none for a run of no length.</param>
/// <param name="UnplacedBends">Bends of a run that is given by its length: they are counted in the length and have no place.</param>
/// <param name="UnplacedFittings">Fittings without a place: the tube has to be cut there as well, which is not counted.</param>
/// <param name="Clips">Its clips.</param>
/// <param name="Sleeves">Its sleeves.</param>
public sealed record RunCut(
    int Run, Length Length, ImmutableArray<TubePiece> Pieces, long UnplacedBends, long UnplacedFittings, RunClips Clips, ImmutableArray<Sleeve> Sleeves);

using System.Collections.Immutable;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.CutLists;

/// <summary>The clips of a run.</summary>
/// <param name="Spacing">Largest distance between two, as taken; a fifth less beside a fitting that the tube carries.</param>
/// <param name="Table">Largest distance by the table of the tube's size and material.</param>
/// <param name="Stated">Whether the document gives the places.</param>
/// <param name="At">Places along the run's centre line from its start; empty where they are too many to list.</param>
/// <param name="Count">Clips with a place, listed or not.</param>
/// <param name="Unplaced">Clips beside bends of which the document gives no place: two a bend.</param>
public sealed record ClipsAnswer(Quantity Spacing, Quantity Table, bool Stated, ImmutableArray<Quantity> At, long Count, long Unplaced);

using System.Collections.Immutable;

namespace FlowCalc.Studies.Sizing;

/// <summary>What is asked of a search for sizes, with what it takes to write its choice into the document.</summary>
/// <param name="Problem">The problem.</param>
/// <param name="Document">The layout document as it was sent, UTF-8 JSON.</param>
/// <param name="TubeTexts">For each tube of the stock its own JSON where it is described in the request; null for one that the document or the catalogue names.</param>
/// <param name="NozzleTexts">For each nozzle of the stock the JSON of its diameter or K-factor; null for a type of the document.</param>
/// <param name="Assumptions">What the request left open.</param>
public sealed record SizeRequest(
    SizingProblem Problem, ReadOnlyMemory<byte> Document, ImmutableArray<string?> TubeTexts, ImmutableArray<string?> NozzleTexts, ImmutableArray<Assumption> Assumptions);

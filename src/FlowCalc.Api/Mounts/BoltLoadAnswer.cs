using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Mounts;

/// <summary>What one bolt bears.</summary>
/// <param name="Bolt">Which one, such as <c>bolt 1</c> or <c>adapter bolt 2</c>, in the document's order.</param>
/// <param name="Pull">Pull along it, without prying; 0 where it presses.</param>
/// <param name="Prying">What prying adds to the pull.</param>
/// <param name="Shear">Shear across it.</param>
public sealed record BoltLoadAnswer(string Bolt, Quantity Pull, Quantity Prying, Quantity Shear);

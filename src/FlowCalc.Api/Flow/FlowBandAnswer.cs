using System.Collections.Immutable;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Flow;

/// <summary>How far the uncertain choices of the model move the flow of an agent that boils.</summary>
/// <param name="Low">Least mass flow of the whole.</param>
/// <param name="High">Greatest mass flow of the whole.</param>
/// <param name="Shares">The share of each nozzle, in the document's order.</param>
/// <param name="From">What was varied.</param>
public sealed record FlowBandAnswer(Quantity Low, Quantity High, ImmutableArray<ShareBandAnswer> Shares, ImmutableArray<string> From);

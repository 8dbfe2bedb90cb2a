using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Mounts;

/// <summary>A strap.</summary>
/// <param name="Strap">Which one, such as <c>strap 1</c>, in the document's order.</param>
/// <param name="Tension">Greatest tension in a leg of all cases, its pretension added.</param>
public sealed record StrapAnswer(string Strap, Quantity Tension);

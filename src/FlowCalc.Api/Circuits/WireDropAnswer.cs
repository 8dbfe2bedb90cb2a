using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Circuits;

/// <summary>The voltage over a wire.</summary>
/// <param name="Id">Name of the wire.</param>
/// <param name="Current">Its current.</param>
/// <param name="Voltage">The voltage over it.</param>
public sealed record WireDropAnswer(string Id, Quantity Current, Quantity Voltage);

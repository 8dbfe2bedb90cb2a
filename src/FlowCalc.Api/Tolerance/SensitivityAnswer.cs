using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;

namespace FlowCalc.Api.Tolerance;

/// <summary>What the inputs explain of a figure.</summary>
/// <param name="Case">Index of the case in <c>cases</c>.</param>
/// <param name="Figure">The figure.</param>
/// <param name="Samples">Samples that have it.</param>
/// <param name="Statement">What matters most, in a sentence.</param>
/// <param name="Inputs">All inputs, by what they explain, most first; empty where nothing can be said.</param>
public sealed record SensitivityAnswer(
    int Case,
    [property: AllowedValues("massFlow", "lowestDeviation", "time95", "lastArrival")] string Figure,
    int Samples,
    string Statement,
    ImmutableArray<InputIndexAnswer> Inputs);

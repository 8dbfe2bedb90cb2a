using System.Collections.Immutable;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Tolerance;

/// <summary>How the figures of a case are spread.</summary>
/// <param name="Temperature">Its temperature, from which that of a sample may differ where temperature varies.</param>
/// <param name="Attitude">Its attitude; null for a steady flow.</param>
/// <param name="Failed">Samples that have no answer in it; they count in no figure.</param>
/// <param name="Failures">Why, the commonest first.</param>
/// <param name="Figures">Figures of the whole.</param>
/// <param name="Nozzles">Figures of each nozzle.</param>
/// <param name="Zones">Figures of each zone.</param>
public sealed record CaseSpreadAnswer(
    Quantity Temperature,
    string? Attitude,
    int Failed,
    ImmutableArray<FailureCountAnswer> Failures,
    ImmutableArray<FigureAnswer> Figures,
    ImmutableArray<PlaceSpreadAnswer> Nozzles,
    ImmutableArray<PlaceSpreadAnswer> Zones);

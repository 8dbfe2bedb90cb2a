using System.Collections.Immutable;
using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Studies.Tolerance;

/// <summary>The spread of one case.</summary>
/// <param name="Temperature">Its temperature in the design.</param>
/// <param name="Attitude">Its attitude; null for a steady flow.</param>
/// <param name="Failures">Why samples have no answer, with their number, the commonest first.</param>
/// <param name="Figures">Figures of the whole.</param>
/// <param name="Nozzles">Figures of each nozzle, in the document's order.</param>
/// <param name="Zones">Figures of each zone, in the document's order.</param>
public sealed record CaseSpread(
    Temperature Temperature, Attitude? Attitude, ImmutableArray<(string Reason, int Samples)> Failures,
    ImmutableArray<FigureSpread> Figures, ImmutableArray<PlaceSpread> Nozzles, ImmutableArray<PlaceSpread> Zones)
{
    /// <summary>Samples without an answer in this case.</summary>
    public int Failed => Failures.Sum(failure => failure.Samples);
}

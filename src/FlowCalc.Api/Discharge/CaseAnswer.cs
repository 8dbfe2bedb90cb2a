using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Flow;

namespace FlowCalc.Api.Discharge;

/// <summary>A discharge at one temperature in one attitude. Where <c>failure</c> says why there is none, what follows it is null or empty.</summary>
/// <param name="Temperature">Temperature of bottle and contents.</param>
/// <param name="Attitude">Name of the attitude.</param>
/// <param name="Failure">Why the case has no discharge; null where it has one.</param>
/// <param name="StartPressure">Gauge pressure in the bottle before the valve opens; null where it is not known.</param>
/// <param name="Time95">When 95 % of the contents were out of the nozzles; null where that never happens.</param>
/// <param name="Requirement">What was required and when that was done; null where nothing is required.</param>
/// <param name="LiquidEnd">When the dip tube began to draw gas; null where it never did, or never drew liquid.</param>
/// <param name="End">When the discharge was over.</param>
/// <param name="Ended">Why it was over: the bottle at the surroundings' pressure, nothing moved any more, or carbon dioxide at its triple point, beyond which its snow is not followed.</param>
/// <param name="PeakMassFlow">Greatest flow out of all nozzles together.</param>
/// <param name="PeakPressure">Greatest gauge pressure in the bottle.</param>
/// <param name="LeftInBottle">Agent left in the bottles.</param>
/// <param name="LeftInTubes">Agent left in dip tubes and line.</param>
/// <param name="MostInTubes">Most agent that dip tubes and line held at once; null for a liquid.</param>
/// <param name="CushionExponent">Exponent n of p·Vⁿ that the cushion of a liquid followed; null where it did not expand.</param>
/// <param name="Zones">What each zone got by mass, in the document's order.</param>
/// <param name="Nozzles">What each nozzle gave, in the document's order.</param>
/// <param name="Band">How far the uncertain choices of the model move the answer; null where none is open.</param>
/// <param name="QuasiSteady">How far the flow may be taken as steady at each instant.</param>
/// <param name="Series">The discharge through time, thinned.</param>
public sealed record CaseAnswer(
    Quantity Temperature,
    string Attitude,
    string? Failure,
    Quantity? StartPressure,
    Quantity? Time95,
    RequirementAnswer? Requirement,
    Quantity? LiquidEnd,
    Quantity? End,
    [property: AllowedValues("equalised", "flow-stopped", "triple-point")] string? Ended,
    Quantity? PeakMassFlow,
    Quantity? PeakPressure,
    Quantity? LeftInBottle,
    Quantity? LeftInTubes,
    Quantity? MostInTubes,
    double? CushionExponent,
    ImmutableArray<ZoneAnswer> Zones,
    ImmutableArray<NozzleDischargeAnswer> Nozzles,
    BandAnswer? Band,
    QuasiSteadyAnswer? QuasiSteady,
    SeriesAnswer? Series);

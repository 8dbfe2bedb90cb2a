using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Discharge;

/// <summary>What a nozzle gave.</summary>
/// <param name="Id">Id of the nozzle's point.</param>
/// <param name="Zone">Its zone; null for none.</param>
/// <param name="Arrival">When agent came to it; null where it never did.</param>
/// <param name="Mass">Agent out of it.</param>
/// <param name="Share">Part of all that left the nozzles, 0 to 1.</param>
/// <param name="WantedShare">Part that it should give, 0 to 1.</param>
/// <param name="Deviation">Share over wanted share, less 1; null where nothing is wanted.</param>
/// <param name="Time95">When 95 % of its own mass was out; null where it gave nothing.</param>
/// <param name="LiquidEnd">When gas came to it; null where it never did.</param>
/// <param name="PeakMassFlow">Greatest flow out of it.</param>
/// <param name="Surge">Bound of the pressure rise when the liquid met it; null where none came.</param>
public sealed record NozzleDischargeAnswer(
    string Id, string? Zone, Quantity? Arrival, Quantity Mass, double Share, double WantedShare, double? Deviation, Quantity? Time95, Quantity? LiquidEnd,
    Quantity PeakMassFlow, Quantity? Surge);

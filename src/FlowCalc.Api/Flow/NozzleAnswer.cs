using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Flow;

/// <summary>What a nozzle gets.</summary>
/// <param name="Id">Id of the nozzle's point.</param>
/// <param name="Zone">Its zone; null for none.</param>
/// <param name="Pressure">Gauge total pressure at the nozzle.</param>
/// <param name="MassFlow">Mass flow; 0 where height alone stops it.</param>
/// <param name="VolumeFlow">The same as a volume.</param>
/// <param name="Share">Part of the whole flow, 0 to 1.</param>
/// <param name="WantedShare">Part that it should get, 0 to 1.</param>
/// <param name="Deviation">Share over wanted share, less 1; null where nothing is wanted.</param>
/// <param name="Losses">The drop from the supply, or from the bottle, to the nozzle, by kind.</param>
public readonly record struct NozzleAnswer(
    string Id, string? Zone, Quantity Pressure, Quantity MassFlow, Quantity VolumeFlow, double Share, double WantedShare, double? Deviation, LossesAnswer Losses);

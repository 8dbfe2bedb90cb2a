using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Compare;

/// <summary>What a nozzle gets in one of the layouts, and how that differs from the base.</summary>
/// <param name="Name">Name of the layout.</param>
/// <param name="Pressure">Gauge pressure at the nozzle in the steady flow.</param>
/// <param name="MassFlow">Its flow.</param>
/// <param name="Share">Part of the whole flow, 0 to 1.</param>
/// <param name="Deviation">Share over wanted share, less 1; null where nothing is wanted.</param>
/// <param name="Discharge">The worst that it gets over the cases of the discharge; null without one.</param>
/// <param name="Difference">From the base; null in the base itself and where the base has no such nozzle.</param>
public sealed record NozzleInAnswer(
    string Name, Quantity Pressure, Quantity MassFlow, double Share, double? Deviation, NozzleExtremesAnswer? Discharge, NozzleDifferenceAnswer? Difference);

using FlowCalc.Flows;

namespace FlowCalc.Studies.Comparing;

/// <summary>What a nozzle gets in one of the layouts compared.</summary>
/// <param name="Flow">In the steady flow.</param>
/// <param name="Discharge">Over the discharge's cases; null without a discharge, or where no case has one.</param>
public sealed record NozzlePlace(NozzleFlow Flow, NozzleExtremes? Discharge);

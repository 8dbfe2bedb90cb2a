using UnitsNet;

namespace FlowCalc.Findings;

/// <summary>The answer that a changed layout gives, in short.</summary>
/// <param name="Verdict">Its verdict.</param>
/// <param name="Fails">Its findings that fail.</param>
/// <param name="Warns">Its findings that warn.</param>
/// <param name="WorstNozzle">Id of the nozzle furthest from its wanted share, of a discharge in any case; null where nothing is wanted of any.</param>
/// <param name="WorstDeviation">Its share over the wanted share, less 1, dimensionless; null where there is no such nozzle, or it gets agent and nothing is wanted of it.</param>
/// <param name="SlowestCase">Of a discharge the case that takes longest to what is required, or to 95 % of the contents where nothing is; null of a flow, or where no case has a discharge.</param>
/// <param name="SlowestTime">That time; null where it never comes.</param>
public sealed record CureOutcome(Severity Verdict, int Fails, int Warns, string? WorstNozzle, double? WorstDeviation, string? SlowestCase = null, Duration? SlowestTime = null);

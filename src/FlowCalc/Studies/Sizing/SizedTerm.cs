namespace FlowCalc.Studies.Sizing;

/// <summary>What a free run or nozzle adds to an objective that is a sum.</summary>
/// <param name="IsRun">Whether it is a run; else a nozzle.</param>
/// <param name="Index">Index of the run, or of the nozzle's point.</param>
/// <param name="PerMetre">Cost or mass of a metre of the run's tube; null where pieces are counted.</param>
/// <param name="Value">What it adds: cost, kg, or 1 for a piece that is exchanged.</param>
public sealed record SizedTerm(bool IsRun, int Index, double? PerMetre, double Value);

using FlowCalc.Layouts;

namespace FlowCalc.Calibration;

/// <summary>The size of an unknown that explains the readings best.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Nozzles">The make of nozzle; null for every other unknown.</param>
/// <param name="Value">Its size, SI.</param>
/// <param name="StandardError">Standard error, SI; null where the readings do not bound it, as at the end of its range.</param>
/// <param name="Low">Lower end of the interval that holds it in 95 of 100 cases, if this cause is the right one.</param>
/// <param name="High">Upper end of that interval.</param>
/// <param name="IsAtBound">Whether it came to an end of the range that is tried.</param>
public sealed record FittedUnknown(UnknownKind Kind, NozzleGroup? Nozzles, double Value, double? StandardError, double Low, double High, bool IsAtBound);

using System.ComponentModel.DataAnnotations;

namespace FlowCalc.Api.Calibration;

/// <summary>A cause without an answer.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Run">Id of the run; null where it is no run, or all runs.</param>
/// <param name="Why">Why.</param>
public sealed record LeftOutAnswer([property: AllowedValues("supply-pressure", "roughness", "bore", "nozzles", "run")] string Cause, string? Run, string Why);

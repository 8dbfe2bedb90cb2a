using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Calibration;

/// <summary>What a nozzle gets of the layout's own agent, at the pressure of its own supply.</summary>
/// <param name="Id">Id of the nozzle's point.</param>
/// <param name="Zone">Its zone; null for none.</param>
/// <param name="WantedShare">Part of the flow that it should get.</param>
/// <param name="DrawnShare">Its part as drawn.</param>
/// <param name="BuiltShare">Its part as built.</param>
/// <param name="DrawnDeviation">Share as drawn over wanted share, less 1; null where nothing is wanted.</param>
/// <param name="BuiltDeviation">Share as built over wanted share, less 1; null where nothing is wanted.</param>
/// <param name="DrawnFlow">Its mass flow as drawn.</param>
/// <param name="BuiltFlow">Its mass flow as built.</param>
/// <param name="DrawnPressure">Gauge total pressure at it as drawn.</param>
/// <param name="BuiltPressure">Gauge total pressure at it as built.</param>
public sealed record BuiltNozzleAnswer(
    string Id, string? Zone, double WantedShare, double DrawnShare, double BuiltShare, double? DrawnDeviation, double? BuiltDeviation, Quantity DrawnFlow, Quantity BuiltFlow, Quantity DrawnPressure, Quantity BuiltPressure);

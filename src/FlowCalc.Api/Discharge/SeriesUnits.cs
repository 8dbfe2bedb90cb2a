namespace FlowCalc.Api.Discharge;

/// <summary>Units of a series.</summary>
/// <param name="Time">Of times.</param>
/// <param name="Pressure">Of pressures.</param>
/// <param name="Mass">Of masses.</param>
/// <param name="MassFlow">Of flows.</param>
public sealed record SeriesUnits(string Time, string Pressure, string Mass, string MassFlow);

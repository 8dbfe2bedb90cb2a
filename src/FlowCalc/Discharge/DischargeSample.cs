namespace FlowCalc.Discharge;

/// <summary>One instant of a discharge.</summary>
/// <param name="Time">Time since the valve began to open, s.</param>
/// <param name="BottlePressure">Absolute pressure in the bottle, Pa.</param>
/// <param name="GasTemperature">Temperature of the cushion, K.</param>
/// <param name="LiquidInBottle">Agent in all bottles, kg: of a liquefied gas its vapour with it.</param>
/// <param name="Flow">Agent out of each nozzle, kg/s.</param>
/// <param name="Pressure">Absolute pressure at each nozzle, Pa.</param>
/// <param name="Delivered">Agent that each nozzle has delivered, kg.</param>
internal sealed record DischargeSample(
    double Time, double BottlePressure, double GasTemperature, double LiquidInBottle, double[] Flow, double[] Pressure, double[] Delivered);

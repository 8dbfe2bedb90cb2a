namespace FlowCalc.Discharge;

/// <summary>One instant of a discharge.</summary>
/// <param name="Time">Time since the valve began to open, s.</param>
/// <param name="BottlePressure">Absolute pressure in the bottle, Pa.</param>
/// <param name="GasTemperature">Temperature of the cushion, K.</param>
/// <param name="LiquidInBottle">Liquid in all bottles, kg.</param>
/// <param name="Flow">Liquid out of each nozzle, kg/s.</param>
/// <param name="Pressure">Absolute pressure at each nozzle, Pa.</param>
/// <param name="Delivered">Liquid that each nozzle has delivered, kg.</param>
internal sealed record DischargeSample(
    double Time, double BottlePressure, double GasTemperature, double LiquidInBottle, double[] Flow, double[] Pressure, double[] Delivered);

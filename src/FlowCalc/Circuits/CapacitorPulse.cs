namespace FlowCalc.Circuits;

/// <summary>What a charged capacitor gives an actuator.</summary>
/// <param name="Push">Index of the push.</param>
/// <param name="Actuator">Index of the actuator.</param>
/// <param name="TimeConstant">Time in which the current falls to 1/e, s.</param>
/// <param name="Above">Time for which it is at or over the all-fire current, s.</param>
/// <param name="Energy">Energy that the actuator has got when all is over, J.</param>
public readonly record struct CapacitorPulse(int Push, int Actuator, double TimeConstant, double Above, double Energy);

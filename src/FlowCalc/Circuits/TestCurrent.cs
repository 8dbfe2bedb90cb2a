namespace FlowCalc.Circuits;

/// <summary>The largest current that an actuator can get where nothing is meant to fire, with the source at its strongest and one lamp failed.</summary>
/// <param name="Actuator">Index of the actuator.</param>
/// <param name="Current">The current, A.</param>
/// <param name="Sound">The largest without a failed lamp, A.</param>
/// <param name="Limit">The least of a tenth of the no-fire current, where that is known, and 50 mA, A.</param>
/// <param name="State">The state in which it is.</param>
/// <param name="Push">Index of what is pressed then; −1 for nothing.</param>
/// <param name="Lamp">Index of the lamp that has failed then: its diode shorted, its resistor at its low end; −1 for none.</param>
public readonly record struct TestCurrent(int Actuator, double Current, double Sound, double Limit, CircuitState State, int Push, int Lamp);

using System.Collections.Immutable;

namespace FlowCalc.Circuits;

/// <summary>What a charged capacitor gives the actuators.</summary>
/// <remarks>
/// Every current of the network is straight in the capacitor's voltage as long as each diode goes on as it began, so that all fall alike: i = i∞ + (i0 − i∞)·exp(−t/τ), with
/// τ = C·dU/dI of the source. Two solves give the straight line.
/// </remarks>
static class CapacitorDischarge
{
    public static ImmutableArray<CapacitorPulse> Of(StateTable table, ImmutableArray<FiringPress> presses)
    {
        var pulses = ImmutableArray.CreateBuilder<CapacitorPulse>();
        foreach (var press in presses)
        {
            if (press.Fired.IsEmpty) continue;
            var full = press.Currents;
            var half = CircuitSolver.SolveAt(table.Circuit, new CircuitSetting(CircuitState.Armed, press.Push, IsFresh: false), full, full.SourceVoltage / 2);
            foreach (var actuator in press.Fired) pulses.Add(Pulse(table.Circuit, press.Push, actuator, full, half));
        }
        return pulses.DrainToImmutable();
    }

    static CapacitorPulse Pulse(Circuit circuit, int push, int index, CircuitCurrents full, CircuitCurrents half)
    {
        var actuator = (Actuator)circuit.Parts[index];
        var slope = (full.Source - half.Source) / (full.SourceVoltage / 2);
        var time = circuit.Source.Capacitance!.Value.Farads / slope;
        var rest = full.SourceVoltage - full.Source / slope;
        var direction = Math.Sign(full.Parts[index]);
        var start = direction * full.Parts[index];
        var gain = direction * (full.Parts[index] - half.Parts[index]) / (full.SourceVoltage / 2);
        var end = start - gain * (full.SourceVoltage - rest);
        return new(push, index, time, Above(time, start, end, actuator.AllFire.Amperes), Energy(time, start, end, full.Resistances[index]));
    }

    static double Above(double time, double start, double end, double least) => start < least ? 0 : end >= least ? double.PositiveInfinity : time * Math.Log((start - end) / (least - end));

    // ∫ (i² − i∞²)·R dt: what flows for ever with a diode's voltage against it is none of the capacitor's energy.
    static double Energy(double time, double start, double end, double resistance) =>
        resistance * ((start - end) * (start - end) * time / 2 + 2 * end * (start - end) * time);
}

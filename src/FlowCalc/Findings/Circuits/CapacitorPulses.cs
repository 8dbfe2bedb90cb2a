using FlowCalc.Circuits;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Circuits;

/// <summary>What a charged capacitor gives each actuator: energy, and time at its all-fire current.</summary>
static class CapacitorPulses
{
    public static void Find(JudgedCircuit judged, FindingList findings)
    {
        var (energy, time) = (judged.Limit(FindingCodes.FiringEnergyLow), judged.Limit(FindingCodes.FiringPulseShort));
        List<Hit>? low = null, brief = null;
        foreach (var (index, actuator) in judged.Circuit.Of<Actuator>())
        {
            if (Least(judged.Answer, index) is not { } least) continue;
            if (actuator.AllFireEnergy is { } allFire) Add(energy, index, actuator.Name, least.Energy, allFire.Joules, ref low);
            if (actuator.Pulse is { } pulse) Add(time, index, actuator.Name, least.Above, pulse.Seconds, ref brief);
        }
        findings.Add(FindingCodes.FiringEnergyLow, energy.Source, QuantityKind.Energy, "actuator", low, hit =>
            $"{Wording.Id(hit.Id)} gets {judged.Text(hit.Measured, hit.Bound, QuantityKind.Energy)} of the capacitor at its weakest, limit {judged.Text(hit.Bound, QuantityKind.Energy)}");
        findings.Add(FindingCodes.FiringPulseShort, time.Source, QuantityKind.Time, "actuator", brief, hit =>
            $"{Wording.Id(hit.Id)} is at its all-fire current for {judged.Text(hit.Measured, hit.Bound, QuantityKind.Time)} with the capacitor at its weakest, limit {judged.Text(hit.Bound, QuantityKind.Time)}");
    }

    /// <summary>The least of an actuator of all pushes; null where the source is no capacitor, or nothing fires it.</summary>
    public static (double Energy, double Above)? Least(CircuitResult answer, int actuator)
    {
        (double Energy, double Above)? least = null;
        foreach (var pulse in answer.Pulses)
            if (pulse.Actuator == actuator) least = (Math.Min(pulse.Energy, least?.Energy ?? double.PositiveInfinity), Math.Min(pulse.Above, least?.Above ?? double.PositiveInfinity));
        return least;
    }

    static void Add(Limits.Limit limit, int index, string name, double measured, double needed, ref List<Hit>? hits)
    {
        var (severity, step) = Grading.Of(limit, measured / needed, lowerIsWorse: true);
        if (severity != Severity.Pass) (hits ??= []).Add(new Hit(index, name, severity, -measured / needed, measured, step * needed));
    }
}

using FlowCalc.Circuits;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Circuits;

/// <summary>Currents and voltages of the actuators while they are fired, with the source at its weakest.</summary>
static class FiringCurrents
{
    public static void Find(JudgedCircuit judged, FindingList findings)
    {
        var (current, coil) = (judged.Limit(FindingCodes.LowFiringCurrent), judged.Limit(FindingCodes.LowCoilVoltage));
        List<Hit>? low = null, weak = null;
        foreach (var (index, actuator) in judged.Circuit.Of<Actuator>())
        {
            if (Least(judged.Answer, index) is not { } least) continue;
            var allFire = actuator.AllFire.Amperes;
            // Of a coil that states its voltage alone, the current says nothing that the voltage does not.
            if (actuator.IsPyrotechnic || actuator.RatedVoltage is null)
            {
                var (severity, step) = Grading.Of(current, least.Amperes / allFire, lowerIsWorse: true);
                if (severity != Severity.Pass) (low ??= []).Add(new Hit(index, actuator.Name, severity, -least.Amperes / allFire, least.Amperes, step * allFire));
            }
            if (actuator.RatedVoltage is { } rated)
            {
                var volts = least.Amperes * actuator.Resistance.Ohms;
                var (severity, step) = Grading.Of(coil, volts / rated.Volts, lowerIsWorse: true);
                if (severity != Severity.Pass) (weak ??= []).Add(new Hit(index, actuator.Name, severity, -volts / rated.Volts, volts, step * rated.Volts));
            }
        }
        findings.Add(FindingCodes.LowFiringCurrent, current.Source, QuantityKind.Current, "actuator", low, hit => Sentence(judged, hit));
        findings.Add(FindingCodes.LowCoilVoltage, coil.Source, QuantityKind.Voltage, "coil", weak, hit =>
            $"{Wording.Id(hit.Id)} gets {judged.Text(hit.Measured, hit.Bound, QuantityKind.Voltage)} with {judged.Id(Least(judged.Answer, hit.Item)!.Value.Push)} pressed and the source at its weakest, "
            + $"limit {judged.Text(hit.Bound, QuantityKind.Voltage)}; {Dominant(judged, Least(judged.Answer, hit.Item)!.Value.Push)}");
    }

    /// <summary>The least current of an actuator of all pushes that are there to fire it; null where none is.</summary>
    public static (double Amperes, int Push)? Least(CircuitResult answer, int actuator)
    {
        (double Amperes, int Push)? least = null;
        foreach (var press in answer.Presses)
        {
            var amperes = Math.Abs(press.Currents.Parts[actuator]);
            if (press.Fired.Contains(actuator) && (least is null || amperes < least.Value.Amperes)) least = (amperes, press.Push);
        }
        return least;
    }

    /// <summary>Where most of what does not reach the actuators is lost, for a sentence.</summary>
    public static string Dominant(JudgedCircuit judged, int push)
    {
        var shares = judged.Answer.Presses.Single(press => press.Push == push).Shares!;
        var (name, share) = ((string, double)[])[("the source itself", shares.Source), ("the wires", shares.Wires), ("contacts and fuses", shares.Contacts), ("lamps and resistors", shares.Others)] is var all
            ? all.MaxBy(one => one.Item2) : default;
        return $"{name} {(name == "the source itself" ? "takes" : "take")} most besides the actuators, {Wording.Percent(share)} of what the source gives";
    }

    static string Sentence(JudgedCircuit judged, Hit hit)
    {
        var push = Least(judged.Answer, hit.Item)!.Value.Push;
        var allFire = ((Actuator)judged.Circuit.Parts[hit.Item]).AllFire.Amperes;
        return $"{Wording.Id(hit.Id)} gets {judged.Text(hit.Measured, hit.Bound, QuantityKind.Current)} with {judged.Id(push)} pressed and the source at its weakest, {Wording.Number(hit.Measured / allFire)} times its all-fire current "
            + $"of {judged.Text(allFire, QuantityKind.Current)}, limit {Wording.Number(hit.Bound / allFire)} times; {Dominant(judged, push)}";
    }
}

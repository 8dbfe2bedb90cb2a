using FlowCalc.Circuits;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Circuits;

/// <summary>Currents of the actuators where nothing is meant to fire, and lamps that tell of nothing.</summary>
static class TestCurrents
{
    public static void Find(JudgedCircuit judged, FindingList findings)
    {
        var limit = judged.Limit(FindingCodes.TestCurrentHigh);
        List<Hit>? high = null, fires = null, unknown = null;
        foreach (var test in judged.Answer.TestCurrents)
        {
            var actuator = (Actuator)judged.Circuit.Parts[test.Actuator];
            if (actuator.IsPyrotechnic && actuator.NoFire is null) (unknown ??= []).Add(new Hit(test.Actuator, actuator.Name, Severity.Fail, 0, test.Current, 0));
            if (test.Sound >= actuator.MayFire.Amperes) (fires ??= []).Add(new Hit(test.Actuator, actuator.Name, Severity.Fail, test.Sound, test.Sound, actuator.MayFire.Amperes));
            var (severity, step) = Grading.Of(limit, test.Current / test.Limit);
            if (severity != Severity.Pass) (high ??= []).Add(new Hit(test.Actuator, actuator.Name, severity, test.Current / test.Limit, test.Current, step * test.Limit));
        }
        findings.Add(FindingCodes.TestCurrentHigh, limit.Source, QuantityKind.Current, "actuator", high, hit => Sentence(judged, hit));
        findings.Add(FindingCodes.FiresUnasked, "circuit law", QuantityKind.Current, "actuator", fires, hit =>
            $"{Wording.Id(hit.Id)} gets {judged.Text(hit.Measured, hit.Bound, QuantityKind.Current)} where nothing is meant to fire, and may fire from {judged.Text(hit.Bound, QuantityKind.Current)} on");
        findings.Add(FindingCodes.NoFireUnknown, "the document", QuantityKind.Current, "actuator", unknown, hit =>
            $"{Wording.Id(hit.Id)} states no no-fire current: whether {judged.Text(hit.Measured, QuantityKind.Current)}, the most that it can get untouched, is safe nobody can say; give noFire from its data sheet");
        Lamps(judged, findings);
    }

    static void Lamps(JudgedCircuit judged, FindingList findings)
    {
        List<Hit>? dark = null;
        foreach (var (index, lamp) in judged.Circuit.Of<Lamp>())
        {
            var most = judged.Answer.Rows.Where(row => !row.IsFiring).SelectMany(row => row.Lamps).Where(range => range.Part == index).Max(range => range.Lowest);
            if (most < lamp.LightsAt.Amperes) (dark ??= []).Add(new Hit(index, lamp.Name, Severity.Warn, -most, most, lamp.LightsAt.Amperes));
        }
        findings.Add(FindingCodes.LampDark, "the document", QuantityKind.Current, "lamp", dark, hit =>
            $"{Wording.Id(hit.Id)} gets {judged.Text(hit.Measured, hit.Bound, QuantityKind.Current)} at most with the source at its weakest, and is lit from {judged.Text(hit.Bound, QuantityKind.Current)} on: it shows nothing");
    }

    static string Sentence(JudgedCircuit judged, Hit hit)
    {
        var test = judged.Answer.TestCurrents.Single(one => one.Actuator == hit.Item);
        var failed = test.Lamp < 0 ? "" : ((Lamp)judged.Circuit.Parts[test.Lamp]).ForwardVoltage is null
            ? $" and the resistor of {judged.Id(test.Lamp)} at its low end" : $", the diode of {judged.Id(test.Lamp)} shorted and its resistor at its low end";
        return $"{Wording.Id(hit.Id)} can get {judged.Text(hit.Measured, hit.Bound, QuantityKind.Current)} when the circuit is {judged.Standing(test.State, test.Push)}, with the source at its strongest{failed}; limit {judged.Text(hit.Bound, QuantityKind.Current)}";
    }
}

using FlowCalc.Quantities;

namespace FlowCalc.Findings.Circuits;

/// <summary>Fuses that may open before the actuators have fired.</summary>
static class FuseLoads
{
    const string Source = "ISO 8820-3 (from memory)";

    public static void Find(JudgedCircuit judged, FindingList findings)
    {
        List<Hit>? open = null, unknown = null;
        foreach (var load in judged.Answer.Fuses)
        {
            var rating = ((FlowCalc.Circuits.Fuse)judged.Circuit.Parts[load.Fuse]).Rating.Amperes;
            if (!(load.Current > rating) || load.Holds is double.PositiveInfinity) continue;
            var hit = new Hit(load.Fuse, judged.Name(load.Fuse), Severity.Note, load.Current / rating, load.Current, rating);
            if (load is { Holds: not null, Pulse: null } or { Holds: null }) (unknown ??= []).Add(hit);
            else if (load.Holds < load.Pulse) (open ??= []).Add(hit with { Severity = Severity.Warn });
        }
        findings.Add(FindingCodes.FuseMayOpen, Source, QuantityKind.Current, "fuse", open, hit => $"{Carries(judged, hit)}, sure to hold for {judged.Text(Load(judged, hit).Holds!.Value, QuantityKind.Time)} and wanted for {judged.Text(Load(judged, hit).Pulse!.Value, QuantityKind.Time)}");
        findings.Add(FindingCodes.FuseMayOpen, Source, QuantityKind.Current, "fuse", unknown, hit => $"{Carries(judged, hit)}: whether it holds for the pulse {(Load(judged, hit).Holds is null ? "its maker's curve of time over current says" : "cannot be said, as no actuator states its pulse")}");
    }

    static string Carries(JudgedCircuit judged, Hit hit) =>
        $"{Wording.Id(hit.Id)}, rated {judged.Text(hit.Bound, QuantityKind.Current)}, carries {judged.Text(hit.Measured, hit.Bound, QuantityKind.Current)} with {judged.Id(Load(judged, hit).Push)} pressed and the source at its strongest";

    static FlowCalc.Circuits.FuseLoad Load(JudgedCircuit judged, Hit hit) => judged.Answer.Fuses.Single(load => load.Fuse == hit.Item);
}

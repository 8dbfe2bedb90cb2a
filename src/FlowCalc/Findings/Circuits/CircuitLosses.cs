namespace FlowCalc.Findings.Circuits;

/// <summary>What is lost in wires and within the source while a push fires.</summary>
static class CircuitLosses
{
    public static void Find(JudgedCircuit judged, FindingList findings)
    {
        var (drop, weak) = (judged.Limit(FindingCodes.WireDrop), judged.Limit(FindingCodes.WeakSource));
        List<Hit>? wires = null, source = null;
        foreach (var press in judged.Answer.Presses)
        {
            if (press.Shares is not { } shares) continue;
            Add(drop, judged, press.Push, shares.Wires, ref wires);
            Add(weak, judged, press.Push, shares.Source, ref source);
        }
        findings.Add(FindingCodes.WireDrop, drop.Source, null, "push", wires, hit =>
            $"With {Wording.Id(hit.Id)} pressed wires take {Wording.Percent(hit.Measured, hit.Bound)} of what the source gives, limit {Wording.Percent(hit.Bound)}");
        findings.Add(FindingCodes.WeakSource, weak.Source, null, "push", source, hit =>
            $"With {Wording.Id(hit.Id)} pressed the source loses {Wording.Percent(hit.Measured, hit.Bound)} of what it gives in its own resistance, limit {Wording.Percent(hit.Bound)}: a stronger source gains more than thicker wire");
    }

    static void Add(Limits.Limit limit, JudgedCircuit judged, int push, double share, ref List<Hit>? hits)
    {
        var (severity, step) = Grading.Of(limit, share);
        if (severity != Severity.Pass) (hits ??= []).Add(new Hit(push, judged.Name(push), severity, share, share, step));
    }
}

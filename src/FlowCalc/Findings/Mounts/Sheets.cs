using FlowCalc.Mounts;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Mounts;

/// <summary>Thin sheets without a spreader.</summary>
static class Sheets
{
    /// <summary>Thickness from which a plate under a nut counts as a spreader, m (common practice, no source).</summary>
    public const double LeastSpreader = 0.003;

    public static void Find(JudgedMount judged, FindingList findings)
    {
        if (judged.Mount.Panel is not { } panel || judged.Mount.Bolts.Thread is not null || panel.Spreader?.Thickness.Meters >= LeastSpreader - 1e-9) return;
        var limit = judged.Limit(MountCodes.ThinPanel);
        var (severity, step) = Grading.Of(limit, panel.Thickness.Meters, lowerIsWorse: true);
        if (severity == Severity.Pass) return;
        findings.Add(new Finding(MountCodes.ThinPanel, severity, [PartNames.Of(MountPart.Structure, 0)],
            $"The bolts go through {judged.Text(panel.Thickness)} of sheet, limit {Wording.Of(step, QuantityKind.Length, judged.Units)}, and {(panel.Spreader is { } thin ? $"a spreader of {judged.Text(thin.Thickness)}" : "no spreader")}: a thin sheet bends and tears long before a bolt breaks.",
            new(panel.Thickness.Meters, QuantityKind.Length), new(step, QuantityKind.Length), limit.Source, null), 0);
    }
}

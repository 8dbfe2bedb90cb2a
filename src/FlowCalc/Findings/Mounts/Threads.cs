using FlowCalc.Mounts;
using FlowCalc.Stock;

namespace FlowCalc.Findings.Mounts;

/// <summary>How far bolts go into tapped holes.</summary>
static class Threads
{
    public static void Find(JudgedMount judged, FindingList findings)
    {
        var limit = judged.Limit(MountCodes.ThreadTooShort);
        foreach (var (part, bolts) in judged.Groups)
        {
            if (bolts.Thread is not { } thread) continue;
            var usual = UsualDiameters(thread.Material) * bolts.Size.Diameter;
            var (severity, step) = Grading.Of(limit, thread.Engagement / usual, lowerIsWorse: true);
            if (severity == Severity.Pass) continue;
            findings.Add(new Finding(MountCodes.ThreadTooShort, severity, [PartNames.Of(part, 0)],
                $"The {JudgedMount.Name(part, bolts)} go {judged.Text(thread.Engagement)} into their thread, {Wording.Percent(thread.Engagement / usual)} of the {judged.Text(usual)} that is usual in {thread.Material.Id ?? "that material"}; limit {Wording.Percent(step)}.",
                new(thread.Engagement / usual, null), new(step, null), limit.Source, null), JudgedMount.Item(part));
        }
    }

    /// <summary>The usual engagement over the bolt's diameter: 1 in steel, 2 in softer metals (common practice, no source).</summary>
    public static double UsualDiameters(MountMaterial material) => material.Kind is MountMaterialKind.Steel or MountMaterialKind.Stainless or MountMaterialKind.Titanium ? 1 : 2;
}

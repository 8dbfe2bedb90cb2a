using FlowCalc.Limits;
using FlowCalc.Mounts;

namespace FlowCalc.Findings.Mounts;

/// <summary>Straps that are too few or not of metal, and a bottle that stands outside the structure.</summary>
static class Straps
{
    public static void Find(JudgedMount judged, FindingList findings)
    {
        if (judged.Mount.IsInsideStructure == false)
            findings.Add(new Finding(MountCodes.BottleOutsideStructure, Severity.Warn, [], "The bottle stands outside the main structure, where a crash may reach it.", null, null, MountCodes.OutsideStructure, null), -1);
        if (judged.Mount.Straps is not { } straps) return;
        var limit = judged.Limit(MountCodes.StrapCount);
        var (severity, step) = Grading.Of(limit, straps.Length, lowerIsWorse: true);
        if (severity != Severity.Pass)
            findings.Add(new Finding(MountCodes.StrapCount, severity, [.. Enumerable.Range(0, straps.Length).Select(strap => PartNames.Of(MountPart.Strap, strap))],
                $"The bottle has {Wording.Count(straps.Length, "strap")}, limit {Wording.Number(step)}.", new(straps.Length, null), new(step, null), limit.Source, null), JudgedMount.Item(MountPart.Strap));
        int[] soft = [.. Enumerable.Range(0, straps.Length).Where(strap => !straps[strap].Material.IsMetal)];
        if (soft.Length > 0)
            findings.Add(new Finding(MountCodes.StrapNotMetal, Severity.Warn, [.. soft.Select(strap => PartNames.Of(MountPart.Strap, strap))],
                $"{Wording.Count(soft.Length, "strap")} {(soft.Length == 1 ? "is" : "are")} not of metal, and may melt or creep.", null, null, DefaultLimits.Find(MountCodes.StrapCount)!.Source, null), JudgedMount.Item(MountPart.Strap));
    }
}

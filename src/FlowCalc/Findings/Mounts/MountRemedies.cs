using FlowCalc.Mounts;

namespace FlowCalc.Findings.Mounts;

/// <summary>What may clear a finding of a mount: changes in the order in which they are tried, the smallest first.</summary>
static class MountRemedies
{
    /// <summary>The changes for a finding.</summary>
    /// <param name="entry">The finding.</param>
    /// <param name="judged">The mount that it is a finding of.</param>
    public static IEnumerable<MountChange> For(FoundEntry entry, JudgedMount judged)
    {
        var (layout, mount, units) = (judged.Layout, judged.Mount, judged.Units);
        var group = entry.Item % 10 == JudgedMount.Item(MountPart.Adapter) && mount.Adapter is not null ? MountPart.Adapter : MountPart.Structure;
        return entry.Finding.Code switch
        {
            MountCodes.BoltOverloaded or MountCodes.BoltOverProof => [.. BoltChanges.Stronger(mount, group), .. BoltChanges.Thicker(mount, group)],
            MountCodes.BoltGradeLow or MountCodes.BoltGradeUnknown => BoltChanges.Stronger(mount, group),
            MountCodes.BoltsInLine => BoltChanges.TwoRows(mount, group, units),
            MountCodes.AdapterLever => BoltChanges.Thicker(mount, group),
            MountCodes.HoleBears => [.. BoltChanges.Thicker(mount, group), .. group == MountPart.Adapter ? PlateChanges.ThickerAdapter(mount, units) : []],
            MountCodes.ThreadStrips or MountCodes.ThreadTooShort => BoltChanges.Deeper(mount, group, units),
            MountCodes.HeadPullsThrough => group == MountPart.Adapter
                ? [.. BoltChanges.WiderWashers(mount, group, units), .. PlateChanges.ThickerAdapter(mount, units)]
                : [.. BoltChanges.WiderWashers(mount, group, units), .. PlateChanges.Spreaders(mount, units)],
            MountCodes.ThinPanel => PlateChanges.Spreaders(mount, units),
            MountCodes.PlateBends => (entry.Item / 10) switch
            {
                1 => PlateChanges.ThickerFoot(mount, units),
                2 => PlateChanges.Spreaders(mount, units),
                _ => PlateChanges.ThickerAdapter(mount, units),
            },
            MountCodes.StrapCount => StrapChanges.OneMore(mount, layout, units),
            MountCodes.StrapOverloaded => [.. StrapChanges.Thicker(mount, units), .. StrapChanges.OneMore(mount, layout, units)],
            MountCodes.StrapNotMetal => StrapChanges.OfMetal(mount),
            MountCodes.NoEndStop => StrapChanges.EndStops(mount),
            MountCodes.EndStopOverloaded => StrapChanges.StrongerStops(mount, judged.Result, units),
            _ => [],
        };
    }
}

using FlowCalc.Layouts.Mounts;
using FlowCalc.Mounts;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Mounts;

/// <summary>What a finding of a mount measures, whether it is found or not: for the course of a cure.</summary>
static class MountMeasure
{
    /// <summary>The measure; of a finding without a number 1 where it is found and 0 where not.</summary>
    /// <param name="entry">The finding.</param>
    /// <param name="found">What was found in the mount that is measured.</param>
    /// <param name="mount">The mount.</param>
    /// <param name="result">The mount, worked out.</param>
    public static Measure Of(FoundEntry entry, FindingList found, Mount mount, MountResult result)
    {
        var (code, item) = (entry.Finding.Code, entry.Item);
        if (entry.Finding.Measured is not { } measured) return new(found.Places.ContainsKey((code, item)) ? 1 : 0, null);
        var bolts = item == JudgedMount.Item(MountPart.Adapter) && mount.Adapter is { } adapter ? adapter.Bolts : mount.Bolts;
        return code switch
        {
            MountCodes.StrapCount => new(mount.Straps?.Length ?? 0, null),
            MountCodes.ThreadTooShort => new(bolts.Thread is { } thread ? thread.Engagement / (Threads.UsualDiameters(thread.Material) * bolts.Size.Diameter) : 1, null),
            MountCodes.AdapterLever => new((mount.Spacers ?? UnitsNet.Length.Zero) / bolts.Size.Diameter, null),
            MountCodes.ThinPanel => new(Math.Max(mount.Panel!.Thickness.Meters, mount.Panel.Spreader?.Thickness.Meters ?? 0), measured.Kind),
            _ => new(result.Checks.Where(check => (Uses.CodeOf(check.Kind), Uses.ItemOf(check)) == (code, item)).Select(check => check.Use).DefaultIfEmpty(0).Max(), null),
        };
    }
}

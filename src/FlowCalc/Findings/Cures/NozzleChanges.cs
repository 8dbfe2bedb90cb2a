using FlowCalc.Layouts;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Cures;

/// <summary>Nozzles exchanged for another type that the layout uses elsewhere.</summary>
static class NozzleChanges
{
    /// <summary>The types in use, one nozzle for each, smallest first.</summary>
    public static Nozzle[] Types(Layout layout) =>
        [.. layout.Points.OfType<Nozzle>().Where(nozzle => nozzle.Type is not null).DistinctBy(nozzle => nozzle.Type).OrderBy(nozzle => nozzle.KFactor)];

    /// <summary>A nozzle exchanged for the next types larger or smaller, the nearest first.</summary>
    public static IEnumerable<LayoutChange> Exchanged(FlowCase flowCase, Nozzle[] types, int point, bool larger, int most)
    {
        var nozzle = (Nozzle)flowCase.Layout.Points[point];
        var fitting = larger
            ? types.Where(type => type.KFactor > nozzle.KFactor * (1 + 1e-9))
            : types.Where(type => type.KFactor < nozzle.KFactor * (1 - 1e-9)).Reverse();
        foreach (var type in fitting.Take(most))
        {
            var changed = nozzle with { KFactor = type.KFactor, Orifice = type.Orifice, PressureRange = type.PressureRange, Type = type.Type };
            var before = nozzle.Type ?? $"K {Wording.Of(nozzle.KFactor, QuantityKind.KFactor, flowCase.Units)}";
            yield return new LayoutChange(new CureChange($"points/{nozzle.Id}/nozzle", before, type.Type!),
                $"{Wording.Id(type.Type!)} instead of {Wording.Id(before)} at {Wording.Id(nozzle.Id)}",
                flowCase.Layout with { Points = flowCase.Layout.Points.SetItem(point, changed) }, 0, 0, null);
        }
    }
}

using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Discharge;
using FlowCalc.Layouts;

namespace FlowCalc.Benchmarks;

/// <summary>Times of whole discharges in the library: one temperature, one attitude, without the band, and one with all that an answer holds.</summary>
internal static class DischargeFigures
{
    static readonly int[] Sizes = [2, 5, 10, 50];

    public static void Print()
    {
        foreach (var nozzles in Sizes)
        {
            var layout = Layout(nozzles);
            var bottle = ((BottleSupply)layout.Supply).Bottle;
            var line = CompiledLine.Of(layout, bottle);
            var upright = CaseList.Upright;
            QuickFigures.Line($"discharge-liquid-{nozzles}", QuickFigures.Time(() =>
            {
                var conditions = CaseConditions.Of(layout, (LiquidAgent)layout.Agent, bottle, 293.15);
                var place = BottlePlace.Of(bottle, upright.Gravity);
                var course = DischargeRun.Of(CaseSetup.Of(layout, line, place, upright.Gravity, 293.15, conditions, new ModelChoice(1, 0.1), [3.8]), CancellationToken.None);
                if (course.Failure is { } failure) throw new InvalidOperationException(failure);
            }));
            QuickFigures.Line($"discharge-window-{nozzles}", QuickFigures.Time(() => LayoutDischarge.Solve(layout)));
        }
    }

    static Layout Layout(int nozzles)
    {
        var reading = LayoutReader.Read(CombDocument.Of(nozzles));
        return reading.Layout ?? throw new InvalidOperationException(string.Join("; ", reading.Faults.Select(fault => $"{fault.Pointer} {fault.Message}")));
    }
}

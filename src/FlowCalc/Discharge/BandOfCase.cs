using FlowCalc.Bottles;
using FlowCalc.Flows;
using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>The band of a case: the discharge again with the uncertain choices of the model all one way, and all the other.</summary>
internal static class BandOfCase
{
    /// <summary>The band.</summary>
    /// <param name="course">The answer itself.</param>
    /// <param name="follow">Follows the case with other choices.</param>
    /// <param name="choice">The choices of the answer.</param>
    /// <param name="heat">How the document has the cushion take heat.</param>
    /// <param name="order">Nozzles in the document's order.</param>
    /// <param name="usual">The threshold of the usual part.</param>
    /// <param name="required">The threshold of the requirement; negative for none.</param>
    /// <returns>Null where nothing of the model is left open.</returns>
    public static DischargeBand? Of(
        DischargeCourse course, Func<ModelChoice, DischargeCourse> follow, ModelChoice choice, CushionHeat heat, int[] order, int usual, int required)
    {
        List<string> from = [];
        if (heat == CushionHeat.Wall) from.Add("heat from the bottle's wall times 0.67 and 1.5");
        if (choice.Film > 0) from.Add(FormattableString.Invariant($"film left in swept tubes {100 * choice.Quick.Film:0.##} % and {100 * choice.Slow.Film:0.##} % of their volume"));
        if (from.Count == 0) return null;
        var (quick, slow) = (follow(choice.Quick), follow(choice.Slow));
        if (quick.Failure is not null || slow.Failure is not null) return null;
        DischargeCourse[] all = [course, quick, slow];
        return new(
            Times(all, usual), required < 0 ? null : Times(all, required),
            [.. order.Select(nozzle => new ShareBand(all.Min(one => one.Share(nozzle)), all.Max(one => one.Share(nozzle))))], [.. from]);
    }

    /// <summary>The earliest and the latest time of a mass; one that is never reached is later than any.</summary>
    /// <param name="all">The answers.</param>
    /// <param name="threshold">Which mass.</param>
    public static TimeBand Times(IReadOnlyList<DischargeCourse> all, int threshold)
    {
        double low = double.PositiveInfinity, high = 0;
        foreach (var course in all)
        {
            var time = double.IsNaN(course.Thresholds[threshold]) ? double.PositiveInfinity : course.Thresholds[threshold];
            (low, high) = (Math.Min(low, time), Math.Max(high, time));
        }
        return new(At(low), At(high));
    }

    static Duration? At(double seconds) => double.IsFinite(seconds) ? Duration.FromSeconds(seconds) : null;
}

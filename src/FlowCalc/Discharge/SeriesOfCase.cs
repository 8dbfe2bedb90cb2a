using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>The recorded discharge, thinned and with units.</summary>
internal static class SeriesOfCase
{
    const int Instants = 48;

    // A change of flow by this part of the greatest, from one instant to the same one, is a jump worth two points.
    const double Jump = 0.02;

    /// <summary>The series.</summary>
    /// <param name="course">The discharge.</param>
    /// <param name="compiled">The line in solve order.</param>
    /// <param name="order">Nozzles in the document's order.</param>
    public static DischargeSeries Of(DischargeCourse course, LayoutNetwork compiled, int[] order)
    {
        var kept = Thin(course);
        return new(
            [.. kept.Select(sample => Duration.FromSeconds(sample.Time))],
            [.. kept.Select(sample => Pressure.FromPascals(sample.BottlePressure))],
            [.. kept.Select(sample => Mass.FromKilograms(sample.LiquidInBottle))],
            [.. order.Select(nozzle => new NozzleSeries(
                compiled.Points[compiled.Network.Nozzles[nozzle]],
                [.. kept.Select(sample => MassFlow.FromKilogramsPerSecond(sample.Flow[nozzle]))],
                [.. kept.Select(sample => Pressure.FromPascals(sample.Pressure[nozzle]))]))]);
    }

    static List<DischargeSample> Thin(DischargeCourse course)
    {
        var samples = course.Samples;
        List<DischargeSample> kept = [];
        var spacing = course.End / Instants;
        // Both sides of a jump stay; else one instant in each stretch, and the last.
        var isKept = new bool[samples.Length];
        for (var s = 1; s < samples.Length; s++)
            if (samples[s].Time == samples[s - 1].Time && IsJump(samples[s - 1], samples[s], Jump * course.PeakFlow))
                isKept[s] = isKept[s - 1] = true;
        var last = double.NegativeInfinity;
        for (var s = 0; s < samples.Length; s++)
        {
            if (!isKept[s] && s < samples.Length - 1 && samples[s].Time - last < spacing) continue;
            kept.Add(samples[s]);
            last = samples[s].Time;
        }
        return kept;
    }

    static bool IsJump(DischargeSample from, DischargeSample to, double most)
    {
        for (var i = 0; i < from.Flow.Length; i++)
            if (Math.Abs(to.Flow[i] - from.Flow[i]) > most) return true;
        return false;
    }
}

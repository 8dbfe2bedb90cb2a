using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>The recorded discharge, thinned and with units.</summary>
internal static class SeriesOfCase
{
    const int Instants = 40;

    // A nozzle's flow that has changed by this part of its greatest is worth another instant.
    const double Change = 0.05;

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
        var peaks = Peaks(samples);
        var last = -1;
        for (var s = 0; s < samples.Length; s++)
        {
            var isNear = last >= 0 && samples[s].Time - samples[last].Time < spacing && !HasMoved(samples[last], samples[s], peaks);
            if (!isKept[s] && s < samples.Length - 1 && isNear) continue;
            kept.Add(samples[s]);
            last = s;
        }
        return kept;
    }

    static bool IsJump(DischargeSample from, DischargeSample to, double most)
    {
        for (var i = 0; i < from.Flow.Length; i++)
            if (Math.Abs(to.Flow[i] - from.Flow[i]) > most) return true;
        return false;
    }

    static bool HasMoved(DischargeSample from, DischargeSample to, double[] peaks)
    {
        for (var i = 0; i < peaks.Length; i++)
            if (Math.Abs(to.Flow[i] - from.Flow[i]) > Change * peaks[i]) return true;
        return false;
    }

    static double[] Peaks(DischargeSample[] samples)
    {
        var peaks = new double[samples[0].Flow.Length];
        foreach (var sample in samples)
            for (var i = 0; i < peaks.Length; i++) peaks[i] = Math.Max(peaks[i], sample.Flow[i]);
        return peaks;
    }
}

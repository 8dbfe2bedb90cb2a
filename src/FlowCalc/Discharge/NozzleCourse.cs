namespace FlowCalc.Discharge;

/// <summary>One nozzle's part of a discharge.</summary>
internal static class NozzleCourse
{
    /// <summary>When a part of all that the nozzle gave was out, by the cubic through the recorded masses and flows.</summary>
    /// <param name="course">The discharge.</param>
    /// <param name="nozzle">Which nozzle.</param>
    /// <param name="part">The part, over 0 to 1.</param>
    /// <returns>Time, s; NaN where it gave nothing.</returns>
    public static double TimeOf(DischargeCourse course, int nozzle, double part)
    {
        var mass = part * course.Delivered[nozzle];
        if (!(mass > 0)) return double.NaN;
        for (var s = 1; s < course.Samples.Length; s++)
            if (course.Samples[s].Delivered[nozzle] >= mass)
                return Within(course.Samples[s - 1], course.Samples[s], nozzle, mass);
        return course.End;
    }

    /// <summary>Least and greatest pressure while it gave liquid, Pa absolute, NaN where it gave none; and its greatest flow, kg/s.</summary>
    /// <remarks>The least counts only from where every nozzle that gets any has liquid, and while the dip tube draws it: while a line fills and at the very end every nozzle is low.</remarks>
    public static (double Least, double Greatest, double PeakFlow) Extremes(DischargeCourse course, int nozzle)
    {
        double least = double.NaN, greatest = double.NaN, peak = 0, filled = 0;
        foreach (var arrival in course.Arrival)
            if (arrival > filled) filled = arrival;
        foreach (var sample in course.Samples)
        {
            var flow = sample.Flow[nozzle];
            if (!(flow > 0)) continue;
            peak = Math.Max(peak, flow);
            var pressure = sample.Pressure[nozzle];
            if (!(pressure <= greatest)) greatest = pressure;
            if (sample.Time > filled && !(sample.Time > course.LiquidEnd) && !(pressure >= least)) least = pressure;
        }
        return (least, greatest, peak);
    }

    static double Within(DischargeSample from, DischargeSample to, int nozzle, double mass)
    {
        var span = to.Time - from.Time;
        var (start, end) = (from.Delivered[nozzle], to.Delivered[nozzle]);
        if (!(span > 0 && end > start)) return to.Time;
        double low = 0, high = 1;
        // The mass rises, and bisection needs no slope where the flow begins or ends.
        for (var i = 0; i < 50; i++)
        {
            var u = 0.5 * (low + high);
            var rest = 1 - u;
            var cubic = start * (1 + 2 * u) * rest * rest + end * u * u * (3 - 2 * u)
                + span * u * rest * (from.Flow[nozzle] * rest - to.Flow[nozzle] * u);
            if (cubic < mass) low = u;
            else high = u;
        }
        return from.Time + high * span;
    }
}

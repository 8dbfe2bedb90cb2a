namespace FlowCalc.Discharge;

/// <summary>How large the steps of an expanding discharge may be: parts of contents and pressure, and what its bottle and valve ask.</summary>
/// <param name="problem">The discharge.</param>
/// <param name="rates">Its rates, at their last call.</param>
internal sealed class StepLimit(ExpandingProblem problem, ExpandingRates rates)
{
    double lastPressure, lastTime;

    /// <summary>Size of the largest step from an instant, s.</summary>
    /// <param name="time">Now, s.</param>
    /// <param name="y">State.</param>
    /// <param name="rate">Its rates.</param>
    public double Largest(double time, ReadOnlySpan<double> y, ReadOnlySpan<double> rate)
    {
        var flow = rate[rates.Out] / problem.Count;
        var bottle = problem.Bottle;
        var left = Math.Max(bottle.Agent(y[..bottle.Length]), 0.02 * bottle.Charge);
        var most = flow > 0 ? problem.LargestPart * (rates.Stage == ExpandingStage.Liquid ? Math.Min(bottle.Charge, 4 * left) : 1.5 * left) / flow : 0.1;
        var pressure = rates.Last.Pressure;
        if (lastPressure > pressure && time > lastTime) most = Math.Min(most, 2 * problem.LargestPart * (time - lastTime) / Math.Log(lastPressure / pressure));
        (lastPressure, lastTime) = (pressure, time);
        // The step in which the liquid ends is a small one and goes little beyond, since its rates are of two kinds.
        var toEnd = (rates.Last.LiquidVolume - problem.VolumeLeft) * rates.Last.LiquidDensity / flow;
        if (rates.Stage == ExpandingStage.Liquid && toEnd > 0)
        {
            var small = 2e-3 * bottle.Charge / flow;
            if (toEnd <= small) most = Math.Min(most, Math.Max(1.25 * toEnd, 0.05 * small));
            else most = Math.Min(most, 0.7 * toEnd);
        }
        // A lag much shorter than the steps is not worth following.
        most = Math.Min(most, Math.Max(bottle.LongestStep(y[..bottle.Length]), 0.25 * most));
        if (time < problem.OpeningTime) most = Math.Min(most, Math.Max(0.2 * problem.OpeningTime, 1e-4));
        return most;
    }
}

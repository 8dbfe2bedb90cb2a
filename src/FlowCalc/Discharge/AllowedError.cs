namespace FlowCalc.Discharge;

/// <summary>What a step may err by in each entry of the state.</summary>
internal static class AllowedError
{
    const double MostOfFront = 100;

    /// <summary>Fills in the errors allowed.</summary>
    /// <param name="scale">The errors; overwritten.</param>
    /// <param name="problem">The discharge.</param>
    /// <param name="vector">Where entries stand.</param>
    /// <param name="y">The state at the start.</param>
    public static void Fill(Span<double> scale, DischargeProblem problem, StateVector vector, ReadOnlySpan<double> y)
    {
        var tolerance = problem.Tolerance;
        // A front counts by the liquid behind it, so that one in a small run may err by more of its run.
        for (var j = 0; j < problem.Volume.Length; j++)
            scale[vector.Heads + j] = scale[vector.Tails + j] = tolerance * Math.Clamp(problem.LiquidVolume * problem.Count / problem.Volume[j], 1, MostOfFront);
        scale[StateVector.GasVolume] = tolerance * y[StateVector.GasVolume];
        scale[StateVector.GasTemperature] = scale[StateVector.WallTemperature] = tolerance * problem.Cushion.Temperature;
        scale[StateVector.GasMass] = tolerance * y[StateVector.GasMass];
        vector.DeliveredOf(scale).Fill(tolerance * problem.LiquidVolume * problem.Count * problem.Liquid.ReferenceDensity);
    }
}

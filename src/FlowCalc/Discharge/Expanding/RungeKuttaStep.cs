namespace FlowCalc.Discharge;

/// <summary>One step by the midpoint rule, with the parabola between its ends that has the rates of its start and its end.</summary>
/// <param name="length">Length of the state.</param>
internal sealed class MidpointStep(int length)
{
    readonly double[] first = new double[length], start = new double[length], second = new double[length];

    /// <summary>Size of the step, s.</summary>
    public double Size { get; private set; }

    /// <summary>Rates at the start; to be filled in.</summary>
    public Span<double> StartRates => first;

    /// <summary>Rates in the middle; to be filled in.</summary>
    public Span<double> MiddleRates => second;

    /// <summary>Begins a step.</summary>
    /// <param name="y">State at the start.</param>
    /// <param name="step">Size, s.</param>
    /// <param name="middle">State in the middle by the rates of the start; overwritten.</param>
    public void Begin(ReadOnlySpan<double> y, double step, Span<double> middle)
    {
        y.CopyTo(start);
        Size = step;
        for (var i = 0; i < length; i++) middle[i] = y[i] + 0.5 * step * first[i];
    }

    /// <summary>One entry within the step.</summary>
    /// <param name="entry">Which.</param>
    /// <param name="part">Part of the step, 0 to 1.</param>
    public double At(int entry, double part) => start[entry] + Size * part * (first[entry] + part * (second[entry] - first[entry]));

    /// <summary>The whole state within the step.</summary>
    /// <param name="part">Part of the step, 0 to 1.</param>
    /// <param name="y">Overwritten.</param>
    public void At(double part, Span<double> y)
    {
        for (var i = 0; i < y.Length; i++) y[i] = At(i, part);
    }
}

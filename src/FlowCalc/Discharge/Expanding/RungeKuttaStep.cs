namespace FlowCalc.Discharge;

/// <summary>A step of the classical fourth-order rule of Runge and Kutta (1901), with the cubic in time that its four rates give.</summary>
/// <param name="length">Length of the state.</param>
internal sealed class RungeKuttaStep(int length)
{
    readonly double[] first = new double[length], second = new double[length], third = new double[length], fourth = new double[length], start = new double[length];

    /// <summary>Size of the step, s.</summary>
    public double Size { get; private set; }

    /// <summary>Rates at the start; to be filled in.</summary>
    public Span<double> StartRates => first;

    /// <summary>Rates in the middle by those of the start; to be filled in.</summary>
    public Span<double> MiddleRates => second;

    /// <summary>Rates in the middle by those of the middle; to be filled in.</summary>
    public Span<double> SecondMiddleRates => third;

    /// <summary>Rates at the end; to be filled in.</summary>
    public Span<double> EndRates => fourth;

    /// <summary>Begins a step.</summary>
    /// <param name="y">State at the start.</param>
    /// <param name="step">Size, s.</param>
    public void Begin(ReadOnlySpan<double> y, double step)
    {
        y.CopyTo(start);
        Size = step;
    }

    /// <summary>State at a part of the step by some of its rates.</summary>
    /// <param name="rates">Rates.</param>
    /// <param name="part">Part of the step, 0 to 1.</param>
    /// <param name="y">Overwritten.</param>
    public void Ahead(ReadOnlySpan<double> rates, double part, Span<double> y)
    {
        for (var i = 0; i < y.Length; i++) y[i] = start[i] + part * Size * rates[i];
    }

    /// <summary>One entry within the step, to the third order; at its end to the fourth.</summary>
    /// <param name="entry">Which.</param>
    /// <param name="part">Part of the step, 0 to 1.</param>
    public double At(int entry, double part)
    {
        var square = part * part;
        var cube = 2.0 / 3 * square * part;
        return start[entry] + Size * ((part - 1.5 * square + cube) * first[entry] + (square - cube) * (second[entry] + third[entry]) + (cube - 0.5 * square) * fourth[entry]);
    }

    /// <summary>The whole state within the step.</summary>
    /// <param name="part">Part of the step, 0 to 1.</param>
    /// <param name="y">Overwritten.</param>
    public void At(double part, Span<double> y)
    {
        for (var i = 0; i < y.Length; i++) y[i] = At(i, part);
    }
}

namespace FlowCalc.Discharge;

/// <summary>The right-hand side of an ordinary differential equation.</summary>
/// <param name="time">Time, s.</param>
/// <param name="y">State.</param>
/// <param name="rates">Rates; overwritten.</param>
/// <returns>False where there are none.</returns>
internal delegate bool RateFunction(double time, Span<double> y, Span<double> rates);

/// <summary>One step of an embedded Runge-Kutta pair, with a polynomial between its ends.</summary>
/// <remarks>Linear sums that the rates keep (mass) are kept to rounding by the step and by the polynomial.</remarks>
/// <param name="pair">The pair.</param>
/// <param name="length">Length of the state.</param>
internal sealed class EmbeddedStep(RungeKuttaPair pair, int length)
{
    readonly double[][] k = [.. Enumerable.Range(0, pair.Count).Select(_ => new double[length])];
    readonly double[] start = new double[length];
    readonly double[] trial = new double[length];
    bool isTaken;

    /// <summary>Size of the last step, s.</summary>
    public double Size { get; private set; }

    /// <summary>State at the end of the last step.</summary>
    public Span<double> End => trial;

    /// <summary>Rates at the start of the next step; fill these after <see cref="Restart"/>.</summary>
    public Span<double> StartRates => isTaken ? k[^1] : k[0];

    /// <summary>Tries a step from a state whose rates are in <see cref="StartRates"/>.</summary>
    /// <param name="rates">The right-hand side.</param>
    /// <param name="time">Time at the start, s.</param>
    /// <param name="y">State at the start.</param>
    /// <param name="step">Size of the step, s.</param>
    /// <param name="scale">Error allowed in each entry.</param>
    /// <returns>The largest error over the error allowed: at most 1 for a step that may be taken; NaN where the rates could not be had.</returns>
    public double Try(RateFunction rates, double time, ReadOnlySpan<double> y, double step, ReadOnlySpan<double> scale)
    {
        if (isTaken) (k[0], k[^1]) = (k[^1], k[0]);
        isTaken = false;
        y.CopyTo(start);
        Size = step;
        for (var stage = 1; stage < k.Length; stage++)
        {
            var row = pair.Stage(stage);
            y.CopyTo(trial);
            for (var s = 0; s < row.Length; s++) Add(trial, step * row[s], k[s]);
            if (!rates(time + pair.Node(stage) * step, trial, k[stage])) return double.NaN;
        }
        var weights = pair.Error;
        double worst = 0;
        for (var i = 0; i < length; i++)
        {
            double error = 0;
            for (var s = 0; s < k.Length; s++) error += weights[s] * k[s][i];
            worst = Math.Max(worst, Math.Abs(step * error) / scale[i]);
        }
        return worst;
    }

    /// <summary>Takes the last step whole: the next starts from its end, with the rates there.</summary>
    public void Take() => isTaken = true;

    /// <summary>The next step starts from a jump: its rates are to be filled in.</summary>
    public void Restart() => isTaken = false;

    /// <summary>One entry within the last step.</summary>
    /// <param name="entry">Which.</param>
    /// <param name="part">Part of the step, 0 to 1.</param>
    public double At(int entry, double part)
    {
        var (whole, first, second, dense) = Polynomial(entry);
        var rest = 1 - part;
        return start[entry] + part * (whole + rest * (first + part * (second + rest * dense)));
    }

    /// <summary>Rate of one entry within the last step, which must not have been taken yet.</summary>
    /// <param name="entry">Which.</param>
    /// <param name="part">Part of the step, 0 to 1.</param>
    public double RateAt(int entry, double part)
    {
        var (whole, first, second, dense) = Polynomial(entry);
        var rest = 1 - part;
        var inner = second + rest * dense;
        var middle = first + part * inner;
        var outer = whole + rest * middle;
        return (outer + part * (rest * (inner - part * dense) - middle)) / Size;
    }

    /// <summary>The whole state within the last step.</summary>
    /// <param name="part">Part of the step, 0 to 1.</param>
    /// <param name="y">The state; overwritten.</param>
    public void At(double part, Span<double> y)
    {
        for (var i = 0; i < length; i++) y[i] = At(i, part);
    }

    (double Whole, double First, double Second, double Dense) Polynomial(int entry)
    {
        var whole = trial[entry] - start[entry];
        var first = Size * k[0][entry] - whole;
        var weights = pair.Dense;
        double dense = 0;
        for (var s = 0; s < weights.Length; s++) dense += weights[s] * k[s][entry];
        return (whole, first, whole - Size * k[^1][entry] - first, Size * dense);
    }

    static void Add(double[] y, double factor, double[] rates)
    {
        if (factor == 0) return;
        for (var i = 0; i < y.Length; i++) y[i] += factor * rates[i];
    }
}

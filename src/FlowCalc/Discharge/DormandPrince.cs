namespace FlowCalc.Discharge;

/// <summary>The right-hand side of an ordinary differential equation.</summary>
/// <param name="time">Time, s.</param>
/// <param name="y">State.</param>
/// <param name="rates">Rates; overwritten.</param>
/// <returns>False where there are none.</returns>
internal delegate bool RateFunction(double time, Span<double> y, Span<double> rates);

/// <summary>One step of the embedded Runge-Kutta pair of order 5(4), with a polynomial of order 4 between its ends.</summary>
/// <remarks>
/// Dormand, Prince 1980; interpolant of Shampine 1986 in the form of Hairer, Nørsett, Wanner, Solving Ordinary Differential Equations I,
/// 2nd ed. 1993, section II.6. Linear sums that the rates keep (mass) are kept to rounding by the step and by the polynomial.
/// </remarks>
/// <param name="length">Length of the state.</param>
internal sealed class DormandPrince(int length)
{
    static readonly double[] Nodes = [0, 1.0 / 5, 3.0 / 10, 4.0 / 5, 8.0 / 9, 1, 1];

    static readonly double[][] Stages =
    [
        [],
        [1.0 / 5],
        [3.0 / 40, 9.0 / 40],
        [44.0 / 45, -56.0 / 15, 32.0 / 9],
        [19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729],
        [9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656],
        [35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84],
    ];

    static readonly double[] Error = [71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40];

    static readonly double[] Dense =
    [
        -12715105075.0 / 11282082432, 0, 87487479700.0 / 32700410799, -10690763975.0 / 1880347072,
        701980252875.0 / 199316789632, -1453857185.0 / 822651844, 69997945.0 / 29380423,
    ];

    readonly double[][] k = [new double[length], new double[length], new double[length], new double[length], new double[length], new double[length], new double[length]];
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
            var row = Stages[stage];
            y.CopyTo(trial);
            for (var s = 0; s < row.Length; s++) Add(trial, step * row[s], k[s]);
            if (!rates(time + Nodes[stage] * step, trial, k[stage])) return double.NaN;
        }
        double worst = 0;
        for (var i = 0; i < length; i++)
        {
            double error = 0;
            for (var s = 0; s < k.Length; s++) error += Error[s] * k[s][i];
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
        double dense = 0;
        for (var s = 0; s < k.Length; s++) dense += Dense[s] * k[s][entry];
        return (whole, first, whole - Size * k[^1][entry] - first, Size * dense);
    }

    static void Add(double[] y, double factor, double[] rates)
    {
        if (factor == 0) return;
        for (var i = 0; i < y.Length; i++) y[i] += factor * rates[i];
    }
}

using System.Numerics;

namespace FlowCalc.Networks;

/// <summary>
/// What bends lost when they were last worked out. A flow that has hardly moved since goes along the curve of a power through that point: bends
/// are the dearest part of a sweep, and their exponent changes slowly.
/// </summary>
/// <param name="length">Number of bends with the padding.</param>
internal sealed class BendMemory(int length)
{
    // Relative change of a flow up to which the curve serves: its error is then below 1e-5 of the bend's loss, and 3e-5 where secondary flow sets in.
    const double Near = 5e-3;

    // Steps that Colebrook's 1/√f takes from its start until it is as good as that.
    const int LeastSteps = 3;

    readonly double[] reynolds = new double[length];
    readonly double[] group = new double[length];
    readonly double[] slope = new double[length];
    readonly double[] bow = new double[length];

    /// <summary>Whether the curve may be taken; never in a solve that promises exact balance.</summary>
    public bool IsAllowed { get; set; }

    /// <summary>Sweeps in which bends were worked out since the roots were last at their start.</summary>
    public int Steps { get; set; }

    /// <summary>The loss on the curve.</summary>
    /// <param name="at">First bend of the vector.</param>
    /// <param name="now">Reynolds numbers.</param>
    /// <param name="value">K·Re² on return.</param>
    /// <param name="rate">d(K·Re²)/dRe on return.</param>
    /// <returns>False where the bends have to be worked out.</returns>
    public bool TryRecall(int at, Vector<double> now, out Vector<double> value, out Vector<double> rate)
    {
        (value, rate) = (default, default);
        if (!IsAllowed || Steps < LeastSteps) return false;
        var last = new Vector<double>(reynolds, at);
        var change = now - last;
        if (!Vector.LessThanOrEqualAll(Vector.Abs(change), Near * last)) return false;
        var (start, curve) = (new Vector<double>(slope, at), new Vector<double>(bow, at));
        value = new Vector<double>(group, at) + change * (start + change * curve);
        rate = start + 2 * change * curve;
        return true;
    }

    /// <summary>Keeps what was worked out.</summary>
    /// <param name="at">First bend of the vector.</param>
    /// <param name="now">Reynolds numbers.</param>
    /// <param name="value">K·Re².</param>
    /// <param name="rate">d(K·Re²)/dRe.</param>
    public void Keep(int at, Vector<double> now, Vector<double> value, Vector<double> rate)
    {
        now.CopyTo(reynolds, at);
        value.CopyTo(group, at);
        rate.CopyTo(slope, at);
        // Of G·(Re/Re0)^b with b = G'·Re0/G half the second derivative is G'·(b − 1)/(2·Re0); a bend at rest has none.
        var curve = 0.5 * rate * (rate / value - Vector<double>.One / now);
        Vector.ConditionalSelect(Vector.GreaterThan(value, Vector<double>.Zero), curve, Vector<double>.Zero).CopyTo(bow, at);
    }
}

using System.Numerics;
using System.Runtime.CompilerServices;
using FlowCalc.Losses;

namespace FlowCalc.Networks;

/// <summary>
/// Friction of many tubes at once, in hardware vectors and without branches: laminar to Re 2000, cubic Hermite to 4000, Colebrook above,
/// the law of <see cref="Losses.DarcyFriction"/>.
/// </summary>
/// <remarks>
/// Each tube keeps x = 1/√f. A call takes one step of Colebrook on it: while the flows converge x converges with them, at the price
/// of one logarithm a tube. Below Re 4000 the step is taken at 4000, which is the end value and end slope that the blend needs.
/// </remarks>
internal static class FrictionKernel
{
    /// <summary>A start for x that every tube reaches in two or three steps: f = 0.03.</summary>
    public const double StartRoot = 5.7735;

    const double C = Colebrook.TwoOverLnTen;
    const double C251 = C * 2.51;

    // Of the blend: how far it reaches, and f where it starts.
    const double Span = DarcyFriction.TurbulentLimit - DarcyFriction.LaminarLimit;
    const double Start = 64 / DarcyFriction.LaminarLimit;

    /// <summary>One step for one vector of tubes.</summary>
    /// <param name="reynolds">Reynolds numbers, 0 or more.</param>
    /// <param name="roughness">Relative roughness over 3.7.</param>
    /// <param name="root">1/√f of Colebrook, from the last call; one step nearer on return.</param>
    /// <param name="group">f·Re² on return.</param>
    /// <param name="slope">d(f·Re²)/dRe on return.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Step(Vector<double> reynolds, Vector<double> roughness, ref Vector<double> root, out Vector<double> group, out Vector<double> slope)
    {
        var turbulentReynolds = Vector.Max(reynolds, new Vector<double>(DarcyFriction.TurbulentLimit));
        Turbulent(turbulentReynolds, roughness, ref root, out var factor, out var keep);
        var product = factor * turbulentReynolds;
        group = product * turbulentReynolds;
        slope = 2 * product * keep;
        if (Vector.GreaterThanOrEqualAll(reynolds, turbulentReynolds)) return;

        Blend(reynolds, turbulentReynolds, factor, keep, ref group, ref slope);
    }

    // Kept out of line: the tubes of a well-fed tree never come here.
    static void Blend(
        Vector<double> reynolds, Vector<double> turbulentReynolds, Vector<double> factor, Vector<double> keep, ref Vector<double> group, ref Vector<double> slope)
    {
        // df/dRe at the turbulent end is −2 f (1 − keep) / Re; the cubic is written in u, from 0 to 1 over the span.
        var u = (reynolds - new Vector<double>(DarcyFriction.LaminarLimit)) * (1 / Span);
        var endSlope = factor * (keep - Vector<double>.One) * (2 * Span / DarcyFriction.TurbulentLimit);
        var startSlope = new Vector<double>(-Start * Span / DarcyFriction.LaminarLimit);
        var rise = factor - new Vector<double>(Start);
        var second = 3 * rise - 2 * startSlope - endSlope;
        var third = startSlope + endSlope - 2 * rise;
        var blend = new Vector<double>(Start) + u * (startSlope + u * (second + u * third));
        var blendSlope = (startSlope + u * (2 * second + 3 * u * third)) * (1 / Span);
        var isTurbulent = Vector.GreaterThanOrEqual(reynolds, turbulentReynolds);
        var isLaminar = Vector.LessThanOrEqual(reynolds, new Vector<double>(DarcyFriction.LaminarLimit));
        var below = reynolds * reynolds;
        group = Vector.ConditionalSelect(isTurbulent, group, Vector.ConditionalSelect(isLaminar, 64 * reynolds, blend * below));
        slope = Vector.ConditionalSelect(isTurbulent, slope,
            Vector.ConditionalSelect(isLaminar, new Vector<double>(64), 2 * blend * reynolds + blendSlope * below));
    }

    /// <summary>One step of Colebrook, on x + 2 log(r/3.7 + 2.51 x / Re) = 0.</summary>
    /// <param name="reynolds">Reynolds numbers, over 0.</param>
    /// <param name="roughness">Relative roughness over 3.7.</param>
    /// <param name="root">x, one step nearer on return.</param>
    /// <param name="factor">f on return.</param>
    /// <param name="keep">1 / (1 + q) with q = 2.51·(2/ln 10) / (Re·a) on return: d ln f / d ln Re is 2 (keep − 1).</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Turbulent(Vector<double> reynolds, Vector<double> roughness, ref Vector<double> root, out Vector<double> factor, out Vector<double> keep)
    {
        var scaled = roughness * reynolds + 2.51 * root;
        var shifted = scaled + new Vector<double>(C251);
        // One division for both quotients: it is what a vector unit is slowest at.
        var share = scaled / (shifted * reynolds);
        keep = share * reynolds;
        var residual = root + C * Vector.Log(share * shifted);
        // Chebyshev's third-order step: with F'' = −q²/C it costs four operations more than Newton's, and a sweep less in the end.
        var lag = Vector<double>.One - keep;
        root -= residual * keep * (Vector<double>.One - residual * (lag * lag) * (0.5 / C));
        factor = Vector<double>.One / (root * root);
    }
}

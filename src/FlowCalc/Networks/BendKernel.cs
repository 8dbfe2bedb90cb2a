using System.Numerics;
using System.Runtime.CompilerServices;
using FlowCalc.Losses;

namespace FlowCalc.Networks;

/// <summary>
/// Loss of many formed bends at once, the law of <see cref="Losses.SmoothBend"/>: the eighth-power mean of Rennels' bend with turbulent
/// friction and White's curved tube in laminar flow.
/// </summary>
internal static class BendKernel
{
    // Reynolds number below which the ratios of the mean would be 0/0.
    const double Least = 1e-6;

    /// <summary>One step for one vector of bends.</summary>
    /// <param name="bends">The bends.</param>
    /// <param name="at">First bend of the vector.</param>
    /// <param name="flowReynolds">Reynolds numbers, 0 or more.</param>
    /// <param name="root">1/√f of Colebrook, from the last call; one step nearer on return.</param>
    /// <param name="group">K·Re² on return.</param>
    /// <param name="slope">d(K·Re²)/dRe on return.</param>
    public static void Step(
        BendSet bends, int at, Vector<double> flowReynolds, ref Vector<double> root, out Vector<double> group, out Vector<double> slope)
    {
        var reynolds = Vector.Max(flowReynolds, new Vector<double>(Least));
        var square = reynolds * reynolds;
        Turbulent(bends, at, reynolds, square, ref root, out var turbulent, out var turbulentSlope);
        Laminar(bends, at, reynolds, out var laminar, out var laminarSlope);

        var larger = Vector.Max(turbulent, laminar);
        var perLarger = Vector<double>.One / larger;
        var t = turbulent * perLarger;
        var l = laminar * perLarger;
        Vector<double> t3 = t * t * t, l3 = l * l * l;
        Vector<double> t7 = t3 * t3 * t, l7 = l3 * l3 * l;
        var sum = t7 * t + l7 * l;
        var mean = Vector.SquareRoot(Vector.SquareRoot(Vector.SquareRoot(sum)));
        group = larger * mean * (Vector.Min(flowReynolds, new Vector<double>(Least)) * (1 / Least)); // linear below the floor, as creeping flow is
        slope = mean / sum * (t7 * turbulentSlope + l7 * laminarSlope);
    }

    [MethodImpl(MethodImplOptions.NoInlining)] // each with an inlining budget of its own
    static void Turbulent(
        BendSet bends, int at, Vector<double> reynolds, Vector<double> square, ref Vector<double> root, out Vector<double> group, out Vector<double> slope)
    {
        var shiftedSquare = square + new Vector<double>(SmoothBend.LeastReynolds * SmoothBend.LeastReynolds);
        FrictionKernel.Turbulent(Vector.SquareRoot(shiftedSquare), new Vector<double>(bends.Roughness, at), ref root, out var factor, out var keep);
        var friction = new Vector<double>(bends.PerFriction, at) * factor;
        var coefficient = friction + new Vector<double>(bends.Constant, at);
        group = coefficient * square;
        // df/dRe = 2 f (keep − 1) / shifted · Re / shifted
        slope = 2 * reynolds * (coefficient + friction * (keep - Vector<double>.One) * (square / shiftedSquare));
    }

    [MethodImpl(MethodImplOptions.NoInlining)] // each with an inlining budget of its own
    static void Laminar(BendSet bends, int at, Vector<double> reynolds, out Vector<double> group, out Vector<double> slope)
    {
        var arc = 64 * new Vector<double>(bends.ArcOverBore, at);
        var dean = Vector.Max(reynolds * new Vector<double>(bends.DeanPerReynolds, at), new Vector<double>(CurvedTube.OnsetDean * (1 + 1e-12)));
        var y = Vector.Exp(-CurvedTube.Exponent * Vector.Log(dean * (1 / CurvedTube.OnsetDean)));
        var z = Vector<double>.One - y;
        var power = Vector.Exp(1 / CurvedTube.Exponent * Vector.Log(z));
        // One division for 1 / (1 − power) and 1 / z: it is what a vector unit is slowest at.
        var rest = Vector<double>.One - power;
        var both = Vector<double>.One / (rest * z);
        var straight = both * z;
        group = arc * reynolds * straight;
        // d power / dRe = power · y / (z · Re), only where the Dean number is free to move; at its floor power vanishes.
        slope = arc * straight * (Vector<double>.One + both * power * y);
    }
}

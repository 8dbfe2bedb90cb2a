using FlowCalc.Losses;
using MathNet.Numerics.RootFinding;

namespace FlowCalc.Findings.Calibration;

/// <summary>The narrow place that loses as much as a coefficient.</summary>
static class PinchedBore
{
    const double Narrowest = 1e-3;

    /// <summary>Bore of a short place with sharp edges: a sudden contraction and an expansion behind it.</summary>
    /// <param name="bore">Bore of the tube, m.</param>
    /// <param name="coefficient">Loss coefficient on the velocity head in the tube, over 0.</param>
    /// <returns>Its bore, m. A kink with round edges that loses as much is narrower.</returns>
    public static double Of(double bore, double coefficient)
    {
        double Excess(double ratio)
        {
            var square = ratio * ratio;
            return (BoreChange.SharpContraction(ratio) + BoreChange.Expansion(ratio)) / (square * square) - coefficient;
        }
        return Excess(Narrowest) <= 0 ? Narrowest * bore : bore * Brent.FindRoot(Excess, Narrowest, 1, 1e-12);
    }
}

using MathNet.Numerics.LinearAlgebra;

namespace FlowCalc.Calibration;

/// <summary>Standard errors of a least-squares fit to readings of known uncertainty.</summary>
/// <remarks>Covariance (JᵀJ)⁻¹ of residuals over their standard uncertainties; where they scatter more than these allow, wider by Birge's ratio √(χ²/ν). Source: R. T. Birge, Phys. Rev. 40 (1932) 207–227 (from memory).</remarks>
static class FitErrors
{
    // Beyond, the readings say so little of a combination of the unknowns that a sum of squares is flat along it.
    const double MostCondition = 1e10;

    /// <summary>Standard errors of the variables; null where the readings do not tell the unknowns apart.</summary>
    /// <param name="slopes">Derivatives of the readings over their standard uncertainties: readings by variables.</param>
    /// <param name="chiSquare">χ² there.</param>
    /// <param name="degrees">Degrees of freedom, 0 or more.</param>
    public static double[]? Of(double[,] slopes, double chiSquare, int degrees)
    {
        var values = Matrix<double>.Build.DenseOfArray(slopes).Svd(computeVectors: true);
        var (largest, smallest) = (values.S.Maximum(), values.S.Minimum());
        if (!(smallest > 0) || values.S.Count < slopes.GetLength(1) || largest * largest > MostCondition * smallest * smallest) return null;
        var ratio = degrees > 0 ? Math.Max(1, Math.Sqrt(chiSquare / degrees)) : 1;
        var errors = new double[slopes.GetLength(1)];
        for (var column = 0; column < errors.Length; column++)
        {
            var sum = 0.0;
            for (var k = 0; k < values.S.Count; k++) sum += values.VT[k, column] * values.VT[k, column] / (values.S[k] * values.S[k]);
            errors[column] = ratio * Math.Sqrt(sum);
        }
        return errors;
    }
}

using FlowCalc.Layouts;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace FlowCalc.Calibration;

/// <summary>Least squares of one cause within the ranges of its unknowns.</summary>
/// <remarks>
/// Math.NET's Levenberg–Marquardt method keeps to bounds by a change of variable whose slope vanishes on them: it may not start there, and creeps when the answer lies there, so a
/// single unknown whose χ² rises from the end at which nothing is changed is left there at once. Its own standard errors take the scatter of the residuals for the uncertainty; here
/// the readings' own are known, and errors are those of (JᵀWJ)⁻¹.
/// </remarks>
sealed class BoundedFit(CauseTrial trial, Measured measured)
{
    // Central differences in variables of order one: the solver's 1e-13 and the third derivative weigh alike.
    const double Step = 1e-4;
    const int MostSteps = 60;
    const double Tolerance = 1e-8;
    const double NearBound = 1e-5;

    /// <summary>Values of the variables at the least χ².</summary>
    public double[] Find()
    {
        var count = trial.Unknowns.Length;
        if (count == 1 && trial.Kind == CauseKind.Run && IsWorseFrom(trial.Unknowns[0].Most)) return [trial.Unknowns[0].Most];
        var size = measured.Readings.Length;
        Vector<double> Model(Vector<double> at, Vector<double> _) => Vector<double>.Build.Dense(Scaled(at.AsArray()));
        Matrix<double> Slopes(Vector<double> at, Vector<double> _) => Matrix<double>.Build.DenseOfArray(Jacobian(at.AsArray()));
        var observed = Vector<double>.Build.Dense(size, at => measured.Readings[at].Value / measured.Readings[at].Sigma);
        var objective = ObjectiveFunction.NonlinearModel(Model, Slopes, Vector<double>.Build.Dense(size), observed);
        var least = Vector<double>.Build.Dense(count, at => trial.Unknowns[at].Least);
        var most = Vector<double>.Build.Dense(count, at => trial.Unknowns[at].Most);
        var start = Vector<double>.Build.Dense(count, at => trial.Unknowns[at].Start);
        var found = new LevenbergMarquardtMinimizer(gradientTolerance: Tolerance, stepTolerance: Tolerance, functionTolerance: Tolerance * Tolerance, maximumIterations: MostSteps).FindMinimum(objective, start, least, most);
        return [.. found.MinimizingPoint.Select((value, at) => Settled(value, trial.Unknowns[at]))];
    }

    /// <summary>Residuals over their standard uncertainties.</summary>
    public double[] Residuals(double[] at)
    {
        var predicted = Scaled(at);
        for (var i = 0; i < predicted.Length; i++) predicted[i] = measured.Readings[i].Value / measured.Readings[i].Sigma - predicted[i];
        return predicted;
    }

    /// <summary>Derivatives of the readings, each over its standard uncertainty, by the variables: readings by unknowns.</summary>
    public double[,] Jacobian(double[] at)
    {
        var slopes = new double[measured.Readings.Length, at.Length];
        for (var column = 0; column < at.Length; column++)
        {
            var unknown = trial.Unknowns[column];
            var (low, high) = (Math.Max(unknown.Least, at[column] - Step), Math.Min(unknown.Most, at[column] + Step));
            var (below, above) = (Scaled(Moved(at, column, low)), Scaled(Moved(at, column, high)));
            for (var row = 0; row < below.Length; row++) slopes[row, column] = (above[row] - below[row]) / (high - low);
        }
        return slopes;
    }

    bool IsWorseFrom(double end)
    {
        var residuals = Residuals([end]);
        var slopes = Jacobian([end]);
        var slope = 0.0;
        for (var row = 0; row < residuals.Length; row++) slope -= 2 * residuals[row] * slopes[row, 0];
        return slope <= 0;
    }

    double[] Scaled(double[] at)
    {
        var readings = trial.Predict([.. at.Select((value, column) => trial.Unknowns[column].Size(value))]);
        for (var i = 0; i < readings.Length; i++) readings[i] /= measured.Readings[i].Sigma;
        return readings;
    }

    static double[] Moved(double[] at, int column, double value)
    {
        double[] moved = [.. at];
        moved[column] = value;
        return moved;
    }

    // What crept to within a hair of a bound lies on it.
    static double Settled(double value, Unknown unknown)
    {
        var hair = NearBound * (unknown.Most - unknown.Least);
        return value < unknown.Least + hair ? unknown.Least : value > unknown.Most - hair ? unknown.Most : value;
    }
}

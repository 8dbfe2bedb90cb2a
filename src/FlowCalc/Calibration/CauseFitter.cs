using System.Collections.Immutable;
using FlowCalc.Layouts;
using MathNet.Numerics;

namespace FlowCalc.Calibration;

/// <summary>Fits one cause to the readings of a test.</summary>
/// <param name="measured">The test.</param>
sealed class CauseFitter(Measured measured)
{
    // 95 of 100 cases of a normal distribution.
    const double Wide = 1.959963985;
    const double Hair = 1e-6;

    /// <summary>The layout as drawn.</summary>
    /// <param name="predicted">What each reading would have been.</param>
    public CauseFit Drawn(double[] predicted) => Fit(new CauseTrial(CauseKind.AsDrawn, -1, [], _ => predicted), [], predicted, ChiSquare(predicted), null, 1);

    /// <summary>A cause at its best.</summary>
    /// <param name="trial">The cause.</param>
    /// <param name="alternatives">Causes of that kind.</param>
    /// <param name="why">Why there is no fit; null where there is one.</param>
    /// <returns>The fit; null where there is none.</returns>
    public CauseFit? Of(CauseTrial trial, int alternatives, out string? why)
    {
        why = null;
        try
        {
            var fit = new BoundedFit(trial, measured);
            var at = fit.Find();
            double[] sizes = [.. at.Select((value, index) => trial.Unknowns[index].Size(value))];
            var predicted = trial.Predict(sizes);
            var chi = ChiSquare(predicted);
            var errors = FitErrors.Of(fit.Jacobian(at), chi, measured.Readings.Length - at.Length);
            if (errors is null)
            {
                why = at.Length > 1 ? "The readings do not tell its unknowns apart." : "No reading depends on it.";
                return null;
            }
            var unknowns = at.Select((value, index) => Found(trial.Unknowns[index], value, errors[index])).ToImmutableArray();
            return Fit(trial, unknowns, predicted, chi, trial.FlowLost?.Invoke(sizes[0]), alternatives);
        }
        catch (TestNotSolvedException unsolved)
        {
            why = unsolved.Message;
            return null;
        }
    }

    double ChiSquare(double[] predicted)
    {
        var chi = 0.0;
        for (var at = 0; at < predicted.Length; at++)
        {
            var residual = (measured.Readings[at].Value - predicted[at]) / measured.Readings[at].Sigma;
            chi += residual * residual;
        }
        return chi;
    }

    static CauseFit Fit(CauseTrial trial, ImmutableArray<FittedUnknown> unknowns, double[] predicted, double chi, double? flowLost, int alternatives)
    {
        var degrees = predicted.Length - unknowns.Length;
        double? chance = degrees > 0 ? SpecialFunctions.GammaUpperRegularized(degrees / 2.0, chi / 2) : null;
        return new CauseFit(trial.Kind, trial.Run, unknowns, [.. predicted], chi, degrees, chance, CauseScore.Of(chi, unknowns.Length, predicted.Length, alternatives), flowLost);
    }

    // The interval is that of the variable, in which readings are nearly straight, so that of a loss it is wider upwards.
    static FittedUnknown Found(Unknown unknown, double at, double error)
    {
        var isAtBound = at <= unknown.Least || at >= unknown.Most;
        var wide = Wide * error;
        var (one, other) = (unknown.Size(Math.Max(unknown.Least, at - wide)), unknown.Size(Math.Min(unknown.Most, at + wide)));
        var value = unknown.Size(at);
        double? own = isAtBound ? null : Math.Abs(unknown.Size(at + Hair) - unknown.Size(at - Hair)) / (2 * Hair) * error;
        return new FittedUnknown(unknown.Kind, unknown.Nozzles, value, own, Math.Min(one, other), Math.Max(one, other), isAtBound);
    }
}

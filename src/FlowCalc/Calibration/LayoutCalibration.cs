using FlowCalc.Flows;
using FlowCalc.Layouts;

namespace FlowCalc.Calibration;

/// <summary>Finds what of a system that was built differs from the layout as drawn, from the readings of a test.</summary>
public static class LayoutCalibration
{
    const int Digits = 6, ScoreDecimals = 6;

    /// <summary>Fits every cause to the readings, ranks them, and solves the layout as the likeliest says that it was built.</summary>
    /// <param name="layout">The layout; it has a test.</param>
    /// <param name="cancellationToken">Asked before every cause and in every solve.</param>
    /// <returns>The causes; look at <see cref="CalibrationResult.Failure"/> first. The same layout gives the same result.</returns>
    /// <exception cref="ArgumentException">The layout has no test.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static CalibrationResult Of(Layout layout, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(layout);
        if (layout.Measured is not { } measured) throw new ArgumentException("The layout has no test.", nameof(layout));
        var fitter = new CauseFitter(measured);
        CauseFit drawn;
        ITestRig rig;
        try
        {
            rig = measured.SupplyPressure is null ? new BottleRig(layout, measured, cancellationToken) : new HeldRig(layout, measured, cancellationToken);
            drawn = fitter.Drawn(rig.Read(rig.Tested, 1));
        }
        catch (TestNotSolvedException unsolved)
        {
            return new CalibrationResult { Failure = $"The test of the layout as drawn has no answer. {unsolved.Message}" };
        }

        var leftOut = new List<CauseLeftOut>();
        var causes = Fitted(fitter, drawn, TrialList.Of(measured, rig, leftOut), leftOut, cancellationToken);
        var best = drawn.Score - causes[0].Score > CauseScore.Strong ? causes[0] : drawn;
        var alike = causes.Where(cause => (cause.Kind, cause.Run) != (best.Kind, best.Run) && cause.Score <= best.Score + CauseScore.Bare);
        var built = BuiltLayout.Of(layout, Rounded(best));
        var drawnFlow = SteadyFlow.Solve(layout, cancellationToken);
        var builtFlow = ReferenceEquals(built, layout) ? drawnFlow : SteadyFlow.Solve(built, cancellationToken);
        var failed = new[] { drawnFlow, builtFlow }.FirstOrDefault(flow => !flow.Report.Converged);
        if (failed is not null) return new CalibrationResult { Failure = failed.Report.Failure ?? "The solve did not converge." };
        return new CalibrationResult
        {
            Causes = [.. causes],
            Drawn = drawn,
            Best = best,
            Alike = [.. alike],
            LeftOut = [.. leftOut],
            Built = built,
            DrawnFlow = drawnFlow,
            BuiltFlow = builtFlow,
        };
    }

    static List<CauseFit> Fitted(CauseFitter fitter, CauseFit drawn, List<CauseTrial> trials, List<CauseLeftOut> leftOut, CancellationToken cancellationToken)
    {
        var causes = new List<CauseFit> { drawn };
        var runs = trials.Count(trial => trial.Kind == CauseKind.Run);
        foreach (var trial in trials)
        {
            cancellationToken.ThrowIfCancellationRequested();
            if (fitter.Of(trial, trial.Kind == CauseKind.Run ? runs : 1, out var why) is { } fit) causes.Add(fit);
            else leftOut.Add(new(trial.Kind, trial.Run, why!));
        }
        // The sort is stable: causes of one score stay by kind and run. Scores further behind the point than a fit can tell are one.
        return [.. causes.OrderBy(cause => Math.Round(cause.Score, ScoreDecimals))];
    }

    // The document of the layout as built says its sizes in six digits, far within any uncertainty; what is solved is what is told.
    static CauseFit Rounded(CauseFit cause) => cause with
    {
        Unknowns = [.. cause.Unknowns.Select(unknown => unknown with { Value = Round(unknown.Value) })],
    };

    static double Round(double value) =>
        double.Parse(value.ToString("G" + Digits, System.Globalization.CultureInfo.InvariantCulture), System.Globalization.CultureInfo.InvariantCulture);
}

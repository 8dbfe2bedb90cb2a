namespace FlowCalc.Calibration;

/// <summary>The score by which causes are ranked: the Bayesian information criterion of readings with known uncertainties, with a share of the same odds for each run.</summary>
/// <remarks>
/// Score = χ² + p·ln n + 2·ln m, with p unknowns, n readings and m causes of that kind: all kinds have the same odds before the test, and the runs share those of theirs, so that
/// many runs tried do not make one of them likely. Of two causes, the one with a score less by d is exp(d/2) times as likely, as far as so few readings bear it.
/// Source: G. Schwarz, Ann. Stat. 6 (1978) 461–464; steps of evidence: R. E. Kass and A. E. Raftery, J. Am. Stat. Assoc. 90 (1995) 773–795 (both from memory).
/// </remarks>
public static class CauseScore
{
    /// <summary>Two causes whose scores differ by no more are not told apart: not worth more than a bare mention.</summary>
    public const double Bare = 2;

    /// <summary>The layout as drawn stands until another cause has a score less by more than this: strong evidence.</summary>
    public const double Strong = 6;

    /// <summary>The score.</summary>
    /// <param name="chiSquare">χ², 0 or more.</param>
    /// <param name="unknowns">Unknowns, 0 or more.</param>
    /// <param name="readings">Readings, 1 or more.</param>
    /// <param name="alternatives">Causes of that kind, 1 or more.</param>
    /// <returns>Less is better; a plain number.</returns>
    public static double Of(double chiSquare, int unknowns, int readings, int alternatives) =>
        chiSquare + unknowns * Math.Log(readings) + 2 * Math.Log(alternatives);
}

namespace FlowCalc.Tests.Properties.Losses;

/// <summary>Derivatives by differences, to hold analytic ones against.</summary>
internal static class Slope
{
    /// <summary>Central difference of fourth order; its own error is of the order of the fourth power of the relative step plus rounding over the step.</summary>
    public static double Of(Func<double, double> function, double at, double step) =>
        (8 * (function(at + step) - function(at - step)) - (function(at + 2 * step) - function(at - 2 * step))) / (12 * step);
}

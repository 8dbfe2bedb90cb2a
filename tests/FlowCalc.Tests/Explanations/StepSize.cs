namespace FlowCalc.Tests.Explanations;

/// <summary>How large a step is whose result comes out small.</summary>
internal static class StepSize
{
    /// <summary>The size whose digits a result keeps, where that is not its own or that of a value in its unit.</summary>
    public static double Of(string equation, string unit, IEnumerable<double> values) => (equation, unit) switch
    {
        ("plane-normal", _) => values.Max(value => value * value),
        // An angle has the digits of a whole one, wherever it lies; what is less 1, or a part of 1, those of 1.
        (_, "rad") or ("first-order-index" or "ratio" or "deviation-of-nozzle" or "objective-gap", _) or ("difference", "1") => 1,
        _ => 0,
    };
}

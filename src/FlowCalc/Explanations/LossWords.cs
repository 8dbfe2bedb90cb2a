namespace FlowCalc.Explanations;

/// <summary>The kinds of loss as an answer names them.</summary>
public static class LossWords
{
    /// <summary>The name of a kind among the <c>losses</c> of an answer.</summary>
    /// <param name="kind">The kind.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is no member of its enumeration.</exception>
    public static string Of(LossKind kind) => kind switch
    {
        LossKind.Outlet => "outlet",
        LossKind.Tube => "tube",
        LossKind.Bends => "bends",
        LossKind.Tees => "tees",
        LossKind.Fittings => "fittings",
        LossKind.BoreChanges => "boreChanges",
        LossKind.Rise => "rise",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of loss."),
    };
}

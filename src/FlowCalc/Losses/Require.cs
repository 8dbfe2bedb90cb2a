using System.Runtime.CompilerServices;

namespace FlowCalc.Losses;

/// <summary>Range checks at the public border of the loss functions; every comparison also refuses NaN.</summary>
internal static class Require
{
    public static void Within(double value, double low, double high, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (!(value >= low && value <= high))
            throw new ArgumentOutOfRangeException(name, value, FormattableString.Invariant($"Range: {low} to {high}."));
    }

    public static void Finite(double value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (!double.IsFinite(value))
            throw new ArgumentOutOfRangeException(name, value, "Must be a finite number.");
    }

    public static void FiniteAndPositive(double value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (!(value > 0 && double.IsFinite(value)))
            throw new ArgumentOutOfRangeException(name, value, "Must be finite and above 0.");
    }

    public static void FiniteAndNotNegative(double value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (!(value >= 0 && double.IsFinite(value)))
            throw new ArgumentOutOfRangeException(name, value, "Must be finite and 0 or above.");
    }
}

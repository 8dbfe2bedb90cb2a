namespace FlowCalc.Studies.Sizing;

/// <summary>What a number lies in.</summary>
/// <param name="Low">Lowest.</param>
/// <param name="High">Highest; below <paramref name="Low"/> where there is none.</param>
internal readonly record struct Span(double Low, double High)
{
    /// <summary>Whether there is no number in it.</summary>
    public bool IsEmpty => !(Low <= High);

    /// <summary>What lies in both.</summary>
    public Span And(Span other) => new(Math.Max(Low, other.Low), Math.Min(High, other.High));

    /// <summary>All sums.</summary>
    public static Span operator +(Span a, Span b) => new(a.Low + b.Low, a.High + b.High);

    /// <summary>All differences.</summary>
    public static Span operator -(Span a, Span b) => new(a.Low - b.High, a.High - b.Low);
}

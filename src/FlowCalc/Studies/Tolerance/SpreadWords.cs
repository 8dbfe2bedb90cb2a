using FlowCalc.Studies.Sampling;

namespace FlowCalc.Studies.Tolerance;

/// <summary>Names of kinds, figures and shapes as requests and answers have them.</summary>
public static class SpreadWords
{
    /// <summary>The name of a kind, such as <c>kFactor</c>.</summary>
    /// <param name="kind">The kind.</param>
    public static string Of(SpreadKind kind) => Lowered(kind.ToString());

    /// <summary>The name of a figure, such as <c>massFlow</c>.</summary>
    /// <param name="figure">The figure.</param>
    public static string Of(Figure figure) => Lowered(figure.ToString());

    /// <summary>The name of a shape, such as <c>normal</c>.</summary>
    /// <param name="shape">The shape.</param>
    public static string Of(DistributionShape shape) => Lowered(shape.ToString());

    static string Lowered(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}

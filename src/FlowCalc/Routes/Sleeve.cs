using UnitsNet;

namespace FlowCalc.Routes;

/// <summary>A sleeve over a hot part of a run, 50 mm longer at each side as far as the run goes (common practice, no source).</summary>
/// <param name="From">Where it begins, along the developed centre line from the run's start.</param>
/// <param name="To">Where it ends.</param>
/// <param name="InsideDiameter">Least inside diameter: 1 mm over the tube; over its skin where it has one that the document does not count.</param>
public sealed record Sleeve(Length From, Length To, Length InsideDiameter)
{
    /// <summary>How much longer than the hot place it is at each side, m.</summary>
    internal const double Beyond = 0.05;

    /// <summary>How much wider than the tube it is, m.</summary>
    internal const double Play = 0.001;

    /// <summary>Its length.</summary>
    public Length Length => To - From;
}

namespace FlowCalc.Layouts;

/// <summary>One reading of a test.</summary>
/// <param name="Kind">What it is of.</param>
/// <param name="Point">Index of its point in <see cref="Layout.Points"/>; −1 for the time of the whole discharge.</param>
/// <param name="Value">What was read, SI: kg/s, Pa absolute or s.</param>
/// <param name="Uncertainty">Half the width of the interval that holds the true value in 95 of 100 cases, in the unit of <paramref name="Value"/>, over 0.</param>
public sealed record MeasuredReading(MeasuredKind Kind, int Point, double Value, double Uncertainty)
{
    /// <summary>Standard uncertainty, in the unit of <see cref="Value"/>.</summary>
    /// <remarks>Source: JCGM 100:2008 (GUM), expanded uncertainty with a coverage factor of 2 (from memory).</remarks>
    public double Sigma => Uncertainty / 2;
}

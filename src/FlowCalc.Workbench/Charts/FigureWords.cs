using FlowCalc.Studies.Tolerance;

namespace FlowCalc.Workbench.Charts;

/// <summary>Figures of a study in words.</summary>
public static class FigureWords
{
    /// <summary>Such as <c>the whole flow</c>.</summary>
    /// <param name="figure">The figure.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="figure"/> is no member of its enumeration.</exception>
    public static string Of(Figure figure) => figure switch
    {
        Figure.MassFlow => "the flow",
        Figure.Pressure => "the pressure",
        Figure.Share => "the share",
        Figure.Deviation => "the deviation from the wanted share",
        Figure.LowestDeviation => "the share of the worst-fed nozzle",
        Figure.HighestDeviation => "the share of the best-fed nozzle",
        Figure.Mass => "the mass of agent",
        Figure.Arrival => "the arrival",
        Figure.LastArrival => "the arrival at the last nozzle",
        Figure.Time95 => "the time until 95 % is out",
        Figure.RequiredTime => "the time until what is required is out",
        Figure.LiquidEnd => "the time until the dip tube draws gas",
        Figure.End => "the end of the discharge",
        Figure.PeakMassFlow => "the greatest flow",
        Figure.LeftBehind => "the agent left behind",
        _ => throw new ArgumentOutOfRangeException(nameof(figure), figure, "No such figure."),
    };
}

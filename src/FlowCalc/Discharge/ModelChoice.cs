namespace FlowCalc.Discharge;

/// <summary>The uncertain choices of the model, for the answer itself and for its band.</summary>
/// <param name="WallFactor">Multiplies the coefficient of free convection.</param>
/// <param name="Film">Part of a swept tube's volume that stays on its wall.</param>
internal readonly record struct ModelChoice(double WallFactor, double Film)
{
    /// <summary>How far free convection in a closed vessel is known, either way.</summary>
    public const double WallSpread = 1.5;

    /// <summary>The film by half either way, 5 to 15 % for the usual 10 %.</summary>
    public const double FilmSpread = 0.5;

    /// <summary>More heat and less film: the quickest and most complete.</summary>
    public ModelChoice Quick => new(WallFactor * WallSpread, Film * (1 - FilmSpread));

    /// <summary>Less heat and more film.</summary>
    public ModelChoice Slow => new(WallFactor / WallSpread, Film * (1 + FilmSpread));
}

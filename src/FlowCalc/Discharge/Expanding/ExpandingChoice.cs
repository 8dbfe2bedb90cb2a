using FlowCalc.Agents;

namespace FlowCalc.Discharge;

/// <summary>The uncertain choices of the model of a gas or a liquefied gas, for the answer itself and for its band.</summary>
/// <param name="Nozzles">How far the agent boils in the nozzles.</param>
/// <param name="Lag">Time in which dissolved nitrogen comes out, s; infinite for never.</param>
/// <param name="WallFactor">Multiplies the heat from the shell.</param>
internal readonly record struct ExpandingChoice(NozzleModel Nozzles, double Lag, double WallFactor)
{
    /// <summary>Nozzles that pass the most, nitrogen that keeps up the pressure at once, more heat.</summary>
    public ExpandingChoice Quick => new(NozzleModel.Frozen, 0, WallFactor * ModelChoice.WallSpread);

    /// <summary>Nozzles that pass the least, nitrogen that stays dissolved, less heat.</summary>
    public ExpandingChoice Slow => new(NozzleModel.Equilibrium, double.PositiveInfinity, WallFactor / ModelChoice.WallSpread);
}

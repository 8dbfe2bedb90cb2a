using FlowCalc.Losses;
using UnitsNet;

namespace FlowCalc.Flows;

/// <summary>What a run carries.</summary>
/// <param name="MassFlow">Mass flow from its start to its end.</param>
/// <param name="Velocity">Mean velocity in its bore; of a gas or of an agent that boils at its end, where it is the greatest.</param>
/// <param name="Reynolds">Reynolds number in its bore, dimensionless.</param>
/// <param name="Regime">Laminar, transition or turbulent.</param>
/// <param name="PressureIn">Absolute total pressure at its start, after the loss of the point that feeds it.</param>
/// <param name="PressureOut">Absolute total pressure at its end, before the loss of the point that it feeds.</param>
/// <param name="Losses">The drop from the point that feeds it, before that point's own loss, to its end, by kind.</param>
public sealed record RunFlow(MassFlow MassFlow, Speed Velocity, double Reynolds, FlowRegime Regime, Pressure PressureIn, Pressure PressureOut, LossBreakdown Losses)
{
    /// <summary>Whether its end runs at the speed of sound, so that the run passes no more whatever is behind it; never for a liquid.</summary>
    public bool IsChoked { get; init; }
}

using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Flow;

/// <summary>What a run carries.</summary>
/// <param name="Id">Id of the run.</param>
/// <param name="From">Id of the point that feeds it.</param>
/// <param name="To">Id of the point that it feeds.</param>
/// <param name="MassFlow">Mass flow from start to end.</param>
/// <param name="Velocity">Mean velocity in its bore.</param>
/// <param name="Reynolds">Reynolds number in its bore.</param>
/// <param name="Regime">State of the flow, told by the Reynolds number.</param>
/// <param name="PressureIn">Gauge total pressure at its start, after the loss of the point that feeds it.</param>
/// <param name="PressureOut">Gauge total pressure at its end, before the loss of the point that it feeds.</param>
/// <param name="Losses">The drop from the point that feeds it, before that point's own loss, to its end, by kind.</param>
public readonly record struct RunAnswer(
    string Id, string From, string To, Quantity MassFlow, Quantity Velocity, double Reynolds,
    [property: AllowedValues("at-rest", "laminar", "transition", "turbulent")] string Regime,
    Quantity PressureIn, Quantity PressureOut, LossesAnswer Losses);

using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Calibration;

/// <summary>What was found of a cause.</summary>
/// <param name="What">What it is: pressure of the supply over that which was read, roughness of all tube, bores over those drawn, K-factor over that which was stated, loss coefficient of the run besides.</param>
/// <param name="Nozzles">The type of nozzle, or the ids of points whose nozzles are described in place; empty for every other unknown.</param>
/// <param name="Value">Its size.</param>
/// <param name="StandardError">Standard error; null at an end of the range that is tried.</param>
/// <param name="Low">Lower end of the interval that holds it in 95 of 100 cases, if this cause is the right one.</param>
/// <param name="High">Upper end of that interval.</param>
/// <param name="AtBound">Whether it came to an end of the range that is tried.</param>
public sealed record UnknownAnswer(
    [property: AllowedValues("pressure-factor", "roughness", "bore-factor", "nozzle-factor", "loss-coefficient")] string What,
    ImmutableArray<string> Nozzles, Quantity Value, Quantity? StandardError, Quantity Low, Quantity High, bool AtBound);

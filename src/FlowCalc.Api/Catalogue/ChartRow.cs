using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Catalogue;

/// <summary>A bottle at rest at one temperature.</summary>
/// <param name="Temperature">Temperature of bottle and contents.</param>
/// <param name="Pressure">Gauge pressure in it; null where it is not answered.</param>
/// <param name="LiquidPart">Part of its volume that is liquid, 0 to 1; null where it holds one phase, or nothing is answered.</param>
/// <param name="Phase">What it holds; null where nothing is answered.</param>
public sealed record ChartRow(Quantity Temperature, Quantity? Pressure, double? LiquidPart, [property: AllowedValues("two-phase", "liquid-full", "one-phase")] string? Phase);

using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Calibration;

/// <summary>A reading of the test.</summary>
/// <param name="Kind">What it is of: flow out of a nozzle, static pressure in the tube at a point, or the time of the whole discharge.</param>
/// <param name="Point">Id of its point; null for a time.</param>
/// <param name="Read">What was read; what was collected as a flow.</param>
/// <param name="Uncertainty">Half the width of the interval that holds the true value in 95 of 100 cases.</param>
/// <param name="Drawn">What the layout as drawn gives.</param>
/// <param name="Likeliest">What the likeliest cause gives.</param>
/// <param name="DrawnResidual">Read less drawn, in standard uncertainties, of which the uncertainty is two.</param>
/// <param name="Residual">Read less likeliest, in standard uncertainties.</param>
public readonly record struct ReadingAnswer(
    [property: AllowedValues("flow", "pressure", "discharge-time")] string Kind, string? Point, Quantity Read, Quantity Uncertainty, Quantity Drawn, Quantity Likeliest, double DrawnResidual, double Residual);

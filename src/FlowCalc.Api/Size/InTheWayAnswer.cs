using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Size;

/// <summary>One requirement of a wish that no sizes meet.</summary>
/// <param name="Requirement">Which.</param>
/// <param name="IsAlone">Whether sizes were found that meet all the others: then this one alone is in the way.</param>
/// <param name="Best">How near to it those come: the deviation, the longest time or the least pressure; null where there are none.</param>
/// <param name="Message">The same in a sentence.</param>
public sealed record InTheWayAnswer(
    [property: AllowedValues("deviation", "within", "leastPressure")] string Requirement, bool IsAlone, Quantity? Best, string Message);

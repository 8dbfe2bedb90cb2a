using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Size;

/// <summary>An objective's measure: pieces exchanged, cost in the stock's currency, mass of tube, the largest deviation, or the time of the slowest case.</summary>
/// <param name="Name">The objective.</param>
/// <param name="Before">The layout as it was sent; null where that cannot be said, as of the cost of a tube that is not in the stock.</param>
/// <param name="After">With the sizes; null where none meet the wish.</param>
/// <param name="Bound">No sizes that meet the wish are below it; null where none meet it.</param>
/// <param name="Gap">After less bound; null where none meet the wish.</param>
public sealed record ObjectiveAnswer(
    [property: AllowedValues("fewest-changes", "least-cost", "least-mass", "best-balance", "shortest-time")] string Name,
    Quantity? Before, Quantity? After, Quantity? Bound, Quantity? Gap);

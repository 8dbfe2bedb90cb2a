using System.ComponentModel.DataAnnotations;

namespace FlowCalc.Api.Compare;

/// <summary>A layout's place in the ranking.</summary>
/// <param name="Place">Its place, from 1.</param>
/// <param name="Name">Its name.</param>
/// <param name="By">What put it behind the one before it, in the order in which these decide: whether there is a flow, the verdict, the count of places that fail, of places warned of, the worst nozzle's deviation, the slowest case's time, and at last the order of the request, as for the first.</param>
/// <param name="Reason">The same in a sentence with the numbers.</param>
public sealed record RankAnswer(
    int Place, string Name, [property: AllowedValues("no-flow", "verdict", "fails", "warns", "deviation", "time", "order")] string By, string Reason);

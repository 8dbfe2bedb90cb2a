using FlowCalc.Agents;

namespace FlowCalc.Studies.Sizing;

/// <summary>What a search for sizes takes for granted.</summary>
public static class SizingAssumptions
{
    const string Own = "how this search is defined";

    /// <summary>The assumptions beside those of layout and request.</summary>
    /// <param name="request">The request.</param>
    /// <param name="result">What came of it.</param>
    public static IEnumerable<Assumption> Of(SizeRequest request, SizingResult result)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(result);
        var problem = request.Problem;
        yield return new("/wish", "shares and pressures are those of the steady flow at the layout's temperature, standing as drawn", Own);
        if (!problem.Nozzles.IsEmpty) yield return new("/wish/deviation", "wanted shares stay what the document as it was sent wants, whatever nozzles are chosen; where they hung on K-factors the chosen layout states them", Own);
        yield return new("/stock", "what is there may stay, whether the stock has it or not", Own);
        if (problem.Objective == SizingObjective.LeastCost) yield return new("/objective", "the cost of the tube in free runs, by length; a tube that is there and not in the stock has no cost, so that it is replaced", Own);
        if (problem.Objective == SizingObjective.LeastMass) yield return new("/objective", "the mass of the tube in free runs, by length, without what is in it; of a known metal from its diameters", "densities of metals from memory");
        yield return new("/objective", "of equal choices the one with fewer changes, then the smaller largest deviation, as far as they were found", Own);
        if (problem.Layout.Agent is not LiquidAgent && !result.IsProven)
            yield return new("/layout/agent", "bounds on the flow are known for liquids only: for this agent the search tries choices, and proves nothing that it has not tried in full", Own);
        if ((problem.Wish.HasTime || problem.Objective == SizingObjective.ShortestTime) && !result.IsProven)
            yield return new("/wish/within", "time goes by the first flow within a quarter: what is further off by its flow was left aside without a discharge, and the bound allows for it", Own);
    }
}

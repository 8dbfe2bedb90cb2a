using System.Collections.Immutable;
using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Flows;

namespace FlowCalc.Discharge;

/// <summary>The band of a case of a gas or a liquefied gas: the discharge again with the uncertain choices all one way, and all the other, and what tees may do to the shares.</summary>
internal static class ExpandingBand
{
    /// <summary>The band.</summary>
    /// <param name="agent">The agent.</param>
    /// <param name="heat">How the document has the contents take heat.</param>
    /// <param name="course">The answer itself.</param>
    /// <param name="choice">The choices of the answer.</param>
    /// <param name="follow">Follows the case with other choices.</param>
    /// <param name="order">Nozzles in the document's order.</param>
    /// <param name="asked">The masses whose times are asked.</param>
    /// <param name="tees">By which factors tees may change each nozzle's share, in the document's order; empty for none.</param>
    /// <returns>Null where nothing of the model is left open.</returns>
    public static DischargeBand? Of(
        ExpandingAgent agent, CushionHeat heat, DischargeCourse course, ExpandingChoice choice, Func<ExpandingChoice, DischargeCourse> follow, int[] order, AskedMasses asked, ImmutableArray<ShareBand> tees)
    {
        List<string> from = [];
        if (agent.Kind != AgentKind.InertGas) from.Add($"{FlowBand.Words(NozzleModel.Equilibrium)} and {FlowBand.Words(NozzleModel.Frozen)}");
        if (agent.Kind == AgentKind.LiquefiedUnderNitrogen) from.Add("dissolved nitrogen that comes out at once and that stays dissolved");
        if (heat == CushionHeat.Wall) from.Add("heat from the bottle's wall times 0.67 and 1.5");
        if (from.Count == 0) return null;
        List<DischargeCourse> all = [course];
        foreach (var other in (ReadOnlySpan<ExpandingChoice>)[choice.Quick, choice.Slow])
        {
            var answer = follow(other);
            if (answer.Failure is not null && other.Nozzles != choice.Nozzles)
            {
                // The rest of the choices still says something.
                from.Add($"{FlowBand.Words(other.Nozzles)} could not be followed and are left out");
                answer = follow(other with { Nozzles = choice.Nozzles });
            }
            if (answer.Failure is null) all.Add(answer);
            else from.Add("one side of these could not be followed and is left out");
        }
        if (!tees.IsEmpty) from.Add(TeeQuality.Words);
        return new(
            BandOfCase.Times(all, asked.Usual), asked.Required < 0 ? null : BandOfCase.Times(all, asked.Required),
            [.. order.Select((nozzle, at) => Share(all, nozzle, tees.IsEmpty ? new(1, 1) : tees[at]))], [.. from]);
    }

    static ShareBand Share(List<DischargeCourse> all, int nozzle, ShareBand tees) =>
        new(all.Min(one => one.Share(nozzle)) * tees.Low, Math.Min(all.Max(one => one.Share(nozzle)) * tees.High, 1));
}

using System.Collections.Immutable;
using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Flows;
using FlowCalc.Layouts;

namespace FlowCalc.Discharge;

/// <summary>What a discharge takes for granted beside what the reader filled in.</summary>
internal static class DischargeAssumptions
{
    /// <summary>The layout's assumptions, then those of the cases and of the model.</summary>
    public static ImmutableArray<Assumption> Of(Layout layout, Bottle bottle, CaseList cases, BottlePlace[] places)
    {
        const string at = "/supply/bottle";
        var list = layout.Assumptions.ToBuilder();
        list.AddRange(cases.Assumptions);
        list.AddRange(places.SelectMany(place => place.Assumptions).Distinct());
        if (layout.Agent is ExpandingAgent agent)
        {
            list.AddRange(ExpandingAssumptions.Of(layout, agent));
            list.AddRange(OfExpanding(layout, bottle, agent));
            AddCommon(list, layout, bottle, cases);
            return list.ToImmutable();
        }
        list.Add(new(at, $"pressure before the valve opens: {BottlePressure.Statement}", "property data of the gas"));
        list.Add(new(at, "vapour of the liquid expands with the cushion as if it were its gas; no gas comes out of solution", "simplification, below 3 % of the cushion up to 60 °C"));
        if (bottle.CushionHeat == CushionHeat.Wall)
            list.Add(new($"{at}/cushionHeat", $"heat from the dry wall and the liquid's surface by free convection, Nu = 0.13 Ra^(1/3); {Shell(bottle)}", "McAdams 1954, from memory; uncertain by a factor of 1.5 either way"));
        list.Add(new("/model/film", FormattableString.Invariant($"{100 * layout.Film:0.##} % of the volume of swept tubes stays on their walls"), "common practice, no source"));
        list.Add(new("/runs", "lines start empty; fronts are sharp; the flow is steady at each instant, which tells an arrival at most 12 % late; air ahead leaves through the nozzles", "one-dimensional filling without inertia"));
        list.Add(new("/runs", "gas behind the liquid flows without loss, so that the blow-off after the liquid is the shortest", "simplification"));
        AddCommon(list, layout, bottle, cases);
        return list.ToImmutable();
    }

    static IEnumerable<Assumption> OfExpanding(Layout layout, Bottle bottle, ExpandingAgent agent)
    {
        const string at = "/supply/bottle";
        if (bottle.CushionHeat == CushionHeat.Wall)
            yield return new($"{at}/cushionHeat", $"heat from the shell to gas by free convection, Nu = 0.13 Ra^(1/3), to boiling liquid by 500 W/(m2 K); {Shell(bottle)}", "McAdams 1954, from memory, and common practice, no source; uncertain by a factor of 1.5 either way");
        if (agent.Kind == AgentKind.LiquefiedUnderNitrogen)
            yield return new("/model/nitrogenLag", layout.NitrogenLag is { } lag ? FormattableString.Invariant($"dissolved nitrogen comes out within {lag.Seconds:0.###} s") : "dissolved nitrogen stays dissolved in the bottle",
                "tests with such agents show a lag, its size is not known; the band has both ends");
        yield return new("/runs", "lines fill at the flow of the full line, so that arrivals are rather late; then the line holds what its flow asks for", "simplification");
        if (agent.Kind != AgentKind.InertGas)
            yield return new("/runs", "gas sweeps the line without leaving a film; tubes give no heat to the agent", "simplification");
        if (agent.FloorPressure > 0)
            yield return new("/agent", "the discharge ends at the triple point, below which the liquid turns to snow, which is not followed", "simplification");
    }

    static string Shell(Bottle bottle) =>
        double.IsFinite(BottleShell.HeatCapacity(bottle.Wall, 1)) ? "the shell cools as one" : "the shell keeps its temperature, since wall or metal are not known";

    static void AddCommon(ImmutableArray<Assumption>.Builder list, Layout layout, Bottle bottle, CaseList cases)
    {
        const string at = "/supply/bottle";
        if (bottle.OpeningTime.Seconds > 0)
            list.Add(new($"{at}/openingTime", bottle.Outlet?.ValveKv is null ? "the valve's area grows evenly to the bore that it stands in" : "the valve's area grows evenly to that of its flow coefficient", "common practice, no source"));
        if (cases.Attitudes.Any(attitude => !AttitudeRise.WithoutSideways(layout, attitude.Gravity).IsEmpty))
            list.Add(new("/runs", "runs without places count no sideways offset in attitudes that ask for one", "the document gives no places for them"));
    }
}

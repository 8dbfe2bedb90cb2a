using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Layouts;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>A bottle whose liquid leaves its gas little or no room at the temperature asked for.</summary>
static class BottleFilling
{
    /// <summary>What follows from little room.</summary>
    public const string Little = "warmed further it has no room to expand and the pressure rises steeply";

    /// <summary>How full a bottle is, and how full it may be.</summary>
    public static string Fills(double part, double step) => $"the liquid fills {Wording.Percent(part, step)} of the bottle, limit {Wording.Percent(step)}";

    /// <summary>Part of a bottle that is liquid, 0 to 1 and over; NaN where there is none, or where pressure alone decides, as of a gas that is liquefied alone.</summary>
    public static double PartAt(Bottle bottle, Agent agent, double temperature) => agent switch
    {
        LiquidAgent liquid => BottlePressure.LiquidPart(bottle, liquid, temperature),
        ExpandingAgent { Kind: AgentKind.LiquefiedUnderNitrogen } expanding => ExpandingContents.Of(bottle, expanding, temperature).LiquidPart,
        _ => double.NaN,
    };

    public static void Find(FlowCase flowCase, FindingList findings)
    {
        if (flowCase.Layout.Supply is not BottleSupply { Bottle: var bottle }) return;
        var limit = flowCase.Limit(FindingCodes.BottleLiquidFull);
        var temperature = flowCase.Layout.Temperature.Kelvins;
        var part = PartAt(bottle, flowCase.Layout.Agent, temperature);
        var (severity, step) = Grading.Of(limit, part);
        if (severity == Severity.Pass) return;

        findings.Add(new Finding(FindingCodes.BottleLiquidFull, severity, [flowCase.PointId(flowCase.SupplyPoint)],
            $"At {Wording.Of(temperature, QuantityKind.Temperature, flowCase.Units)} {Fills(part, step)}: {Little}.",
            new Measure(part, null), new Measure(step, null), limit.Source, null), -1);
    }
}

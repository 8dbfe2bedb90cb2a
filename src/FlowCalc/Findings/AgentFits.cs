using FlowCalc.Agents;
using FlowCalc.Layouts;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>What a gas or a liquefied gas brings with it whatever the temperature: its fill, its data, and people where it goes.</summary>
static class AgentFits
{
    public const string UsualFill = "ISO 14520, parts on the agents, and common tables of fill densities (from memory)";
    const string Memory = "common rule of every code known to us (from memory)";

    public static void Find(JudgedLayout judged, FindingList findings)
    {
        if (judged.Layout.Agent is not ExpandingAgent agent) return;
        NearPeople(judged, findings);
        WeakData(judged, agent, findings);
        Fill(judged, agent, findings);
    }

    static void Fill(JudgedLayout judged, ExpandingAgent agent, FindingList findings)
    {
        if (judged.Layout.Supply is not BottleSupply { Bottle: var bottle } || agent.UsualFill is not { } usual) return;
        var fill = bottle.Fill.Kilograms / bottle.Volume.CubicMeters;
        if (!Grading.IsBeyond(fill, usual)) return;
        findings.Add(new Finding(FindingCodes.FillAboveUsual, Severity.Warn, [judged.PointId(judged.SupplyPoint)],
            $"The bottle holds {Wording.Of(fill, usual, QuantityKind.Density, judged.Units)} of {agent.Title}, more than the {Wording.Of(usual, QuantityKind.Density, judged.Units)} that are usual: it becomes full of liquid, or reaches its working pressure, at a lower temperature.",
            new Measure(fill, QuantityKind.Density), new Measure(usual, QuantityKind.Density), UsualFill, null), -1);
    }

    /// <summary>Carbon dioxide where people can be.</summary>
    public static void NearPeople(JudgedAnswer judged, FindingList findings)
    {
        if (judged.Layout.Agent is not ExpandingAgent { People: "never" } agent) return;
        var zones = judged.Layout.Zones.Where(zone => zone.Occupied).Select(zone => zone.Id).ToArray();
        if (zones.Length == 0) return;
        findings.Add(new Finding(FindingCodes.CarbonDioxideNearPeople, Severity.Fail, [.. zones.Take(FindingList.MostIds)],
            $"{agent.Title} would be let go where people can be ({Wording.Ids(zones)}): what puts a fire out kills them. Use another agent there.", null, null, Memory, null), -1);
    }

    static void WeakData(JudgedLayout judged, ExpandingAgent agent, FindingList findings)
    {
        if (!agent.IsWeak || judged.Layout.Supply is not BottleSupply) return;
        findings.Add(new Finding(FindingCodes.WeakAgentData, Severity.Note, [judged.PointId(judged.SupplyPoint)],
            $"How much nitrogen dissolves in {agent.Title} is an estimate, not a measurement: bottle pressures other than at charging are uncertain by some 10 %, and what nitrogen does while the bottle empties by more.",
            null, null, "own estimate, no measurement was at hand", null), -1);
    }

    /// <summary>Whether a temperature is over the critical one.</summary>
    public static bool IsAboveCritical(ExpandingAgent agent, double temperature) => temperature > agent.CriticalTemperature;

    /// <summary>What follows from that; to follow "At 40 °C".</summary>
    public static string AboveCritical(ExpandingAgent agent, JudgedLayout judged) =>
        $"{agent.Title} is over its critical temperature of {Wording.Of(agent.CriticalTemperature!.Value, QuantityKind.Temperature, judged.Units)}: the bottle holds one dense fluid without a level, which a dip tube draws like any gas until it cools and divides";

    /// <summary>By how much a temperature is outside where the model of dissolved nitrogen was held against published figures, K; 0 or less inside; and the end that it is beyond.</summary>
    public static (double By, double End) OutsideAnchor(ExpandingAgent agent, double temperature)
    {
        if (agent.Anchored is not var (low, high)) return (0, double.NaN);
        return temperature < low ? (low - temperature, low) : (temperature - high, high);
    }

    /// <summary>What follows from that; to follow "At 60 °C".</summary>
    public static string BeyondAnchor(double end, JudgedLayout judged) =>
        $"the bottle is beyond {Wording.Of(end, QuantityKind.Temperature, judged.Units)}, the end of where the model of dissolved nitrogen was checked: its pressure may be out by more than elsewhere";
}

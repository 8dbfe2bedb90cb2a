using FlowCalc.Findings.Upkeep;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Quantities;
using FlowCalc.Upkeep;

namespace FlowCalc.Findings;

/// <summary>Holds dates, weight and gauge of a layout's bottle against the rules.</summary>
public static class UpkeepFindings
{
    /// <summary>Judges the upkeep.</summary>
    /// <param name="layout">The layout; it has a service.</param>
    /// <param name="result">Its upkeep on a day.</param>
    /// <param name="units">The system of units that messages are written in.</param>
    /// <returns>Verdict, findings and the limits applied. The same upkeep gives the same judgement, to the last character.</returns>
    /// <exception cref="ArgumentException">The layout has no service, or states a limit that cannot be stated.</exception>
    public static UpkeepJudgement Judge(Layout layout, UpkeepResult result, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(result);
        if (layout.Service is null) throw new ArgumentException("The layout has no service.", nameof(layout));

        var limits = DefaultLimits.For(layout.Limits, LimitUse.Upkeep);
        var judged = new JudgedUpkeep(layout, result, units, limits);
        var findings = new FindingList();
        Dates.Find(judged, findings);
        Contents.Find(judged, findings);
        Assumptions.Find(result.Assumptions, findings);
        return new UpkeepJudgement(findings.Verdict, findings.InOrder(), limits);
    }
}

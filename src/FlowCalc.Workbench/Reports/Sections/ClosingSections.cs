using FlowCalc.Agents;
using FlowCalc.Checks;
using FlowCalc.Coverage;
using FlowCalc.Workbench.Reports.Blocks;

namespace FlowCalc.Workbench.Reports.Sections;

/// <summary>Cautions, what is not in the answer, and where to sign.</summary>
static class ClosingSections
{
    public static ReportSection Cautions(LayoutCheck check) => new("Cautions", [new ReportList(check.Cautions)]);

    public static ReportSection LeftOut(LayoutCheck check) => new("What this report does not cover", [new ReportList([.. Items(check)])]);

    public static ReportSection Signatures() => new("Signatures",
    [
        new ReportParagraph("Whoever signs states what they have read and looked at, nothing else. A signature here approves no system and replaces no inspection, discharge test or licence."),
        new ReportSignature("Prepared"),
        new ReportSignature("Read"),
        new ReportSignature("Compared with what was built"),
    ]);

    static IEnumerable<string> Items(LayoutCheck check)
    {
        yield return "Detection and ventilation.";
        if (check.Coverage is not null)
            foreach (var claim in CoverageClaims.NotProven(check.Layout)) yield return claim;
        yield return "Strength of tube, fittings and bottle beyond the working pressures that the document states; corrosion and vibration.";
        foreach (var part in check.Parts)
            if (part.Why is { } why) yield return why;
        yield return "What is built otherwise than drawn: burrs, flattened bends, dirt, a leaking joint. A discharge test shows that.";
        if (check.Discharge is null) yield break;
        yield return check.Layout.Agent is LiquidAgent
            ? "Left out of the discharge: inertia of what flows, gas coming out of the liquid, drain of the film, friction of the gas behind the liquid, water hammer beyond its bound."
            : "Left out of the discharge: inertia of what flows, snow of carbon dioxide, heat from tubes, choking in valves and restrictors.";
        yield return "Spreads of what is made, such as bores and nozzles off their size: the band tells what the model leaves open, not what the workshop does.";
    }
}

using FlowCalc.Agents;
using FlowCalc.Layouts;
using FlowCalc.Workbench.Reports.Blocks;
using FlowCalc.Workbench.Solving;

namespace FlowCalc.Workbench.Reports.Sections;

/// <summary>Cautions, what is not in the answer, and where to sign.</summary>
static class ClosingSections
{
    public static ReportSection Cautions(Layout layout) => new("Cautions", [new ReportList(Findings.Cautions.For(layout))]);

    public static ReportSection LeftOut(SolvedLayout solved) => new("What this report does not cover", [new ReportList([.. Items(solved)])]);

    public static ReportSection Signatures() => new("Signatures",
    [
        new ReportParagraph("Whoever signs states what they have read and looked at, nothing else. A signature here approves no system and replaces no inspection, discharge test or licence."),
        new ReportSignature("Prepared"),
        new ReportSignature("Read"),
        new ReportSignature("Compared with what was built"),
    ]);

    static IEnumerable<string> Items(SolvedLayout solved)
    {
        yield return "How much agent a space or a fire needs, where nozzles should aim, detection, release, wiring and ventilation.";
        yield return "Strength of tube, fittings, bottle and fixings beyond the working pressures that the document states; corrosion, vibration and crash loads.";
        yield return "What is built otherwise than drawn: burrs, flattened bends, dirt, a leaking joint. A discharge test shows that.";
        if (solved.Discharge is null)
        {
            yield return "Time: the supply is held at its pressure, so that there is no discharge to follow.";
            yield break;
        }
        yield return solved.Layout.Agent is LiquidAgent
            ? "Left out of the discharge: inertia of what flows, gas coming out of the liquid, drain of the film, friction of the gas behind the liquid, water hammer beyond its bound."
            : "Left out of the discharge: inertia of what flows, snow of carbon dioxide, heat from tubes, choking in valves and restrictors.";
        yield return "Spreads of what is made, such as bores and nozzles off their size: the band tells what the model leaves open, not what the workshop does.";
    }
}

using System.Collections.Immutable;
using FlowCalc.Agents;
using FlowCalc.Explanations;
using FlowCalc.ReferenceData;
using FlowCalc.Workbench.Reports.Blocks;
using FlowCalc.Workbench.Solving;

namespace FlowCalc.Workbench.Reports.Sections;

/// <summary>The equations used with their sources, and how far the model was checked.</summary>
static class MethodSection
{
    public static ReportSection Of(SolvedLayout solved, CancellationToken cancel)
    {
        var used = FlowExplainer.Of(solved.Layout, solved.Flow, cancel).Equations.ToHashSet();
        // Its equations are the same in every case, so that one case tells them.
        if (solved.Discharge is { } discharge && WorstCase.Of(discharge) is { } worst)
            used.UnionWith(DischargeExplainer.Of(solved.Layout, discharge with { Cases = [worst] }, cancel).Equations);
        var agent = solved.Layout.Agent;
        var blocks = ImmutableArray.CreateBuilder<ReportBlock>();
        blocks.Add(new ReportParagraph(
            "The line is a tree from one supply. The flow of every run and the pressure of every point are solved together by Newton's method until flows add up at every point and every run and nozzle fits its own law. " +
            "A discharge follows bottle, fronts of liquid and gas, and nozzles through time, with the steady flow of each instant."));
        blocks.Add(ReportTable.Of("Equations used", ["equation", "form, symbols in SI units", "where it holds", "source"], EquationSheet.All.Where(used.Contains).Select(equation => new[] { equation.Name, equation.Form, equation.Range, equation.Source })));
        blocks.Add(new ReportHeading("How far the model was checked"));
        blocks.Add(new ReportList(Checked(agent)));
        if (!agent.Sources.IsEmpty) blocks.Add(ReportTable.Of("Data of the agent", ["source"], agent.Sources.Select(key => SourceCatalogue.Find(key) is { } source ? Cited(source) : key).Select(source => new[] { source })));
        return new("Method and sources", blocks.ToImmutable());
    }

    static ImmutableArray<string> Checked(Agent agent) => agent switch
    {
        LiquidAgent =>
        [
            "Laws of loss are held against printed worked examples, closed forms and the open library fluids; nozzle flows of random trees agree with the EPANET engine within 1.5 %, totals within 0.5 %.",
            "A tree of 6 × 1 mm tube with tested nozzles lands within about 10 % in flow; without a measured bore and tested nozzles within about 20 %.",
            "Made for bores of about 3 to 25 mm. Where a correlation leaves its range a finding says so.",
        ],
        ExpandingAgent { Kind: AgentKind.InertGas } =>
        [
            "Flow of a gas agrees with the exact choked flow through a tube within 2 %; the pressure of a bottle that empties agrees with measured blow-downs of nitrogen within 15 % of their time.",
            "Blends are known to 2 to 5 % in density.",
        ],
        _ =>
        [
            "Liquid and vapour are taken at one speed and in equilibrium: the pressure gradient of such flow is known to 20 to 30 %.",
            "Checked against worked expansions, critical fluxes and solved trees, not against a rig: no open set of measured nozzle pressures and run-out times with its geometry was found. Trust the shares more than the times, and the band more than either.",
        ],
    };

    static string Cited(Source source) => string.Join(", ", new[] { source.Author, source.Title, source.Edition, source.Year, source.Publisher, source.Where }.Where(part => !string.IsNullOrEmpty(part)));
}

using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Tests.Flows;

namespace FlowCalc.Tests.Findings;

/// <summary>A document that was read, solved and judged.</summary>
sealed record Judged(Layout Layout, FlowResult Flow, FlowJudgement Judgement)
{
    public static Judged Of(string json, UnitSystem units = UnitSystem.Metric) => Of(Read(json), units);

    public static Judged Of(Layout layout, UnitSystem units = UnitSystem.Metric)
    {
        var flow = SteadyFlow.Solve(layout, TestContext.Current.CancellationToken);
        Assert.True(flow.Report.Converged, flow.Report.Failure);
        return new Judged(layout, flow, FlowFindings.Judge(layout, flow, units, TestContext.Current.CancellationToken));
    }

    public static Layout Read(string json) => Documents.Read(json);

    public Finding Single(string code) => Assert.Single(Judgement.Findings, finding => finding.Code == code);

    public IEnumerable<Finding> All(string code) => Judgement.Findings.Where(finding => finding.Code == code);

    public bool Has(string code) => Judgement.Findings.Any(finding => finding.Code == code);

    public NozzleFlow Nozzle(string id) => Assert.Single(Flow.Nozzles, nozzle => Layout.Points[nozzle.Point].Id == id);

    public RunFlow Run(string id) => Flow.Runs[Array.FindIndex([.. Layout.Runs], run => run.Id == id)];

    public double Worst() => Flow.Nozzles.Max(nozzle => Math.Abs(nozzle.Deviation ?? 0));
}

using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Quantities;
using FlowCalc.Tests.Flows;

namespace FlowCalc.Tests.Findings.Discharges;

/// <summary>What cures are judged by where a band would cost too much: only notes may hang on it.</summary>
public class WithoutBandTests
{
    [Theory]
    [InlineData("HFC-227ea")]
    [InlineData("carbon-dioxide")]
    [InlineData("nitrogen")]
    public void A_discharge_without_its_band_has_the_numbers_and_the_findings_of_the_whole(string agent)
    {
        var layout = Documents.Read(GasDocuments.Tree(agent, """ "application": "motorsport", "cases": { "temperatures": ["-10 °C", "40 °C"] }, """));
        var cancel = TestContext.Current.CancellationToken;

        var (whole, without) = (LayoutDischarge.Solve(layout, cancel), LayoutDischarge.Solve(layout, DischargeDepth.WithoutBand, TaskScheduler.Default, cancel));

        foreach (var (one, other) in whole.Cases.Zip(without.Cases))
        {
            Assert.NotNull(one.Band);
            Assert.Null(other.Band);
            Assert.Equal((one.Time95, one.RequiredTime, one.LiquidEnd, one.End, one.ColdestGas, one.MostInTubes, one.OutOfReach), (other.Time95, other.RequiredTime, other.LiquidEnd, other.End, other.ColdestGas, other.MostInTubes, other.OutOfReach));
            Assert.Equal(one.Nozzles.AsEnumerable(), other.Nozzles);
        }
        Assert.Equal(Graver(whole), Graver(without));

        IEnumerable<string> Graver(DischargeResult discharge) =>
            DischargeFindings.Judge(layout, discharge, UnitSystem.Metric, cancel).Findings.Where(finding => finding.Severity > Severity.Note).Select(finding => finding.Message);
    }
}

using FlowCalc.Examples;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Tests.Flows;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Tests.Findings;

/// <summary>For each finding that can fail a document in which it does, and the change that clears it: made in the document, read and solved.</summary>
public class CureOfEveryCodeTests
{
    // Ice, data that end, an agent that boils, people near carbon dioxide and a solver that gave up: another agent or temperature is no change of the layout.
    static readonly string[] Without =
    [
        FindingCodes.BelowFreezing, FindingCodes.OutsideAgentData, FindingCodes.CarbonDioxideNearPeople, FindingCodes.DischargeNotSolved,
    ];

    // Found in a cut list alone, whose sentences say what is too short by how much; no flow tells whether a change of it is worth its while.
    static readonly string[] OfCutLists = [FindingCodes.BulkheadGrip, FindingCodes.JointStraightShort, FindingCodes.PieceWithoutLength, FindingCodes.StockTooShort];

    // Found in a firing circuit alone; CircuitCureTests has those that a thicker wire or a larger resistor clears, the others say themselves what is missing or wrongly joined.
    static readonly string[] OfCircuits =
    [
        FindingCodes.FaultFires, FindingCodes.FiresUnasked, FindingCodes.FiringEnergyLow, FindingCodes.FiringPulseShort, FindingCodes.LowCoilVoltage, FindingCodes.LowFiringCurrent,
        FindingCodes.NoFireUnknown, FindingCodes.NothingFires, FindingCodes.TestCurrentHigh,
    ];

    // Dates, weight and gauge: a workshop clears them, no change of the layout.
    static readonly string[] OfUpkeep = [FindingCodes.AgentLost, FindingCodes.DateOverdue, FindingCodes.GasLost, FindingCodes.PressureLost, FindingCodes.PressureTestOverdue, FindingCodes.ServiceOverdue];

    // Found in a coverage alone; CoverageCureTests has those that a turned nozzle or another fill clears, the others say themselves what to shut, add or wait for.
    static readonly string[] OfCoverages =
    [
        CoverageCodes.AimedAtPerson, CoverageCodes.CaseNotAnswered, CoverageCodes.FloodingNotClaimable, CoverageCodes.LeavingTooSlow, CoverageCodes.LowOxygen, CoverageCodes.OverLoael, CoverageCodes.TooLittleAgent,
        CoverageCodes.ZoneWithoutNozzle,
    ];

    // What a test shows of the built system: someone has to look at it, and open or replace it; the changes of an answer describe it, and mend nothing.
    static readonly string[] OfTests = [CalibrationCodes.AsBuiltFails, CalibrationCodes.LikelyBlockedRun, CalibrationCodes.LikelyKinkedRun];

    public static TheoryData<string, string, string> Flows => Rows(CureDocuments.OfFlow);

    public static TheoryData<string, string, string> Discharges => Rows(CureDocuments.OfDischarge);

    [Theory]
    [MemberData(nameof(Flows))]
    public void A_failing_finding_of_a_flow_is_cleared_by_one_change_of_the_document(string code, string path, string json)
    {
        foreach (var units in Enum.GetValues<UnitSystem>()) AssertCleared(CureProof.OfFlow(json, units)!.Value, code, path);
    }

    [Theory]
    [MemberData(nameof(Discharges))]
    public void A_failing_finding_of_a_discharge_is_cleared_by_one_change_of_the_document(string code, string path, string json) =>
        AssertCleared(CureProof.OfDischarge(json), code, path);

    [Fact]
    public void Every_code_that_can_fail_has_such_a_document_or_no_change_that_clears_it()
    {
        var shown = CureDocuments.OfFlow.Concat(CureDocuments.OfDischarge).Select(row => row.Code).Concat(Without).Concat(OfCutLists).Concat(OfCircuits).Concat(OfUpkeep).Concat(OfCoverages).Concat(OfTests).Concat(Mounts.MountDocuments.All.Where(row => row.Severity == Severity.Fail && row.Path is not null).Select(row => row.Code));
        var failing = FindingCodes.All.Where(definition => definition.Severities.Contains(Severity.Fail)).Select(definition => definition.Code);

        Assert.Empty(failing.Except(shown));
    }

    [Theory]
    [InlineData("boat-engine-space")]
    [InlineData("cabinet-inert-gas")]
    [InlineData("machine-enclosure")]
    [InlineData("raid-pickup")]
    [InlineData("yacht-halocarbon")]
    public void Every_failing_finding_of_an_example_has_a_cure_that_clears_it(string name)
    {
        var json = System.Text.Encoding.UTF8.GetString(ExampleCatalogue.Find(name)!.Value.Span);

        foreach (var units in Enum.GetValues<UnitSystem>())
            Assert.All(CureProof.OfFlow(json, units)!.Value, AssertCured);
        if (Documents.Read(json).Supply is BottleSupply) Assert.All(CureProof.OfDischarge(json), AssertCured);
    }

    [Fact]
    public void What_no_change_of_the_layout_clears_has_no_cure()
    {
        var frozen = CureProof.OfDischarge(CureDocuments.Frozen).Single(finding => finding.Code == FindingCodes.BelowFreezing);

        Assert.Null(frozen.Cure);
        Assert.DoesNotContain("tried", frozen.Message, StringComparison.Ordinal);
    }

    static void AssertCured(Finding finding)
    {
        if (finding.Severity == Severity.Fail) Assert.True(finding.Cure is { Clears: true }, finding.Message);
    }

    static void AssertCleared(IEnumerable<Finding> findings, string code, string path)
    {
        var finding = findings.First(one => one.Code == code && one.Severity == Severity.Fail);

        Assert.True(finding.Cure is { Clears: true }, finding.Message);
        Assert.Equal(path, finding.Cure!.Changes[0].Path);
        Assert.StartsWith("With ", finding.Cure.Message, StringComparison.Ordinal);
    }

    static TheoryData<string, string, string> Rows(IEnumerable<(string Code, string Path, string Json)> rows)
    {
        var data = new TheoryData<string, string, string>();
        foreach (var (code, path, json) in rows) data.Add(code, path, json);
        return data;
    }
}

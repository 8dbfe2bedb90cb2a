using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using UnitsNet;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Tests.Findings.Discharges;

public class DischargeFindingsTests
{
    static readonly DischargeCase Starving = Starved(Discharged.Sound, 0.7);

    static DischargeCase Starved(DischargeCase one, double part) =>
        one.With(Discharged.Left, nozzle => nozzle with { Share = 0.5 * part }).With(Discharged.Right, nozzle => nozzle with { Share = 0.54 });

    [Fact]
    public void A_sound_discharge_passes_with_the_limits_of_a_discharge()
    {
        var judgement = Discharged.Judge(Discharged.Sound, Discharged.At(60), Discharged.At(5, Discharged.OnTheRoof));

        Assert.Empty(judgement.Findings);
        Assert.Equal(Severity.Pass, judgement.Verdict);
        Assert.Equal(DefaultLimits.For([], LimitUse.Discharge), judgement.Limits);
    }

    [Fact]
    public void A_finding_names_its_case_in_the_sentence_and_beside_it()
    {
        var finding = Discharged.Judge(Starving with { Temperature = Discharged.Celsius(5), Attitude = Discharged.OnTheRoof }).Single(FindingCodes.StarvedNozzle);

        Assert.Equal("5 °C, on the roof", finding.Case);
        Assert.Equal("At 5 °C, on the roof, left gets 35 % of the agent delivered where 50 % is wanted: 30 % too little, limit 20 %.", finding.Message);
    }

    [Fact]
    public void The_case_is_written_in_the_units_asked_for()
    {
        string? Case(UnitSystem units) => Discharged.Judge(Discharged.Layout(), Discharged.Result(Starving), units).Single(FindingCodes.StarvedNozzle).Case;

        Assert.Equal("68 °F, upright", Case(UnitSystem.Us));
        Assert.Equal("293.15 K, upright", Case(UnitSystem.Si));
    }

    [Fact]
    public void What_is_found_in_several_cases_is_one_finding_of_the_worst()
    {
        var judgement = Discharged.Judge(
            Starved(Discharged.At(20), 0.85), Starved(Discharged.At(60), 0.7), Discharged.At(5), Starved(Discharged.At(5, Discharged.OnTheRoof), 0.75));

        var finding = judgement.Single(FindingCodes.StarvedNozzle);
        Assert.Equal("60 °C, upright", finding.Case);
        Assert.Equal(-0.3, finding.Measured!.Value.Si, tolerance: 1e-12);
        Assert.EndsWith("limit 20 %; also, and no worse, in 2 other cases.", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_cases_that_are_as_bad_the_first_is_named()
    {
        var finding = Discharged.Judge(Starving with { Attitude = Discharged.OnTheRoof }, Starving).Single(FindingCodes.StarvedNozzle);

        Assert.Equal("20 °C, on the roof", finding.Case);
        Assert.EndsWith("; also, and no worse, in 1 other case.", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_found_in_all_cases_says_so() =>
        Assert.EndsWith("; also, and no worse, in every other case.",
            Discharged.Judge(Starving, Starving with { Attitude = Discharged.OnTheRoof }, Starving with { Temperature = Discharged.Celsius(60) }).Single(FindingCodes.StarvedNozzle).Message, StringComparison.Ordinal);

    [Fact]
    public void A_failure_of_one_case_stands_before_a_worse_number_that_only_warns()
    {
        // A nozzle that gets nothing fails though a limit is so wide that any share passes.
        var layout = Discharged.WithLimits("""{ "starved-nozzle": { "warn": 0.5, "fail": 2 } }""");

        var finding = Discharged.Judge(layout, Starved(Discharged.At(60), 0.1), Discharged.At(20).With(Discharged.Left, nozzle => nozzle with { Arrival = null })).Single(FindingCodes.StarvedNozzle);

        Assert.Equal(Severity.Fail, finding.Severity);
        Assert.Equal("20 °C, upright", finding.Case);
    }

    [Fact]
    public void Findings_come_worst_first_then_by_code_then_in_the_documents_order_and_the_verdict_is_the_worst()
    {
        var judgement = Discharged.Judge(
            Starving.With(Discharged.Right, nozzle => nozzle with { Share = 0.3, Arrival = Discharged.Seconds(2) }) with { Time95 = null, LeftInTubes = Mass.FromKilograms(0.1) });

        Assert.Equal(
            [FindingCodes.StarvedNozzle, FindingCodes.StarvedNozzle, FindingCodes.ContentsNotDelivered, FindingCodes.AgentLeftBehind, FindingCodes.LateArrival],
            judgement.Findings.Select(finding => finding.Code));
        Assert.Equal(["left", "right"], judgement.Findings.Take(2).Select(finding => finding.Where.Single()));
        Assert.Equal(Severity.Fail, judgement.Verdict);
    }

    [Fact]
    public void A_stated_limit_moves_what_is_found()
    {
        var layout = Discharged.WithLimits("""{ "starved-nozzle": { "warn": 0.4, "fail": 0.5 } }""");

        var judgement = Discharged.Judge(layout, Starving);

        Assert.Empty(judgement.Findings);
        Assert.Equal(DefaultLimits.StatedInTheDocument, Assert.Single(judgement.Limits, limit => limit.Code == FindingCodes.StarvedNozzle).Source);
    }

    [Fact]
    public void What_was_filled_in_is_a_note_of_no_case()
    {
        var finding = Assert.Single(Discharged.Judge(Discharged.Layout(), Discharged.Result(Discharged.Sound) with { Assumptions = [new("/cases/attitudes", "upright", "as drawn")] }).Findings);

        Assert.Equal((FindingCodes.AssumptionMade, Severity.Note), (finding.Code, finding.Severity));
        Assert.Null(finding.Case);
        Assert.Equal(["/cases/attitudes"], finding.Where);
    }

    [Fact]
    public void A_discharge_of_another_layout_is_a_fault_of_the_caller()
    {
        var layout = Discharged.Layout();
        DischargeCase sound = Discharged.Sound;

        Assert.Throws<ArgumentException>(() => Discharged.Judge(layout, Array.Empty<DischargeCase>()));
        Assert.Throws<ArgumentException>(() => Discharged.Judge(layout, sound with { Nozzles = [sound.Nozzles[0]] }));
        Assert.Throws<ArgumentException>(() => Discharged.Judge(layout, sound with { Zones = [] }));
        Assert.Throws<ArgumentException>(() => Discharged.Judge(layout, sound.With(Discharged.Left, nozzle => nozzle with { Point = 1 })));
        Assert.Throws<ArgumentException>(() => Discharged.Judge(layout, sound.With(Discharged.Left, nozzle => nozzle with { Point = 9 })));
        Assert.Throws<ArgumentException>(() => Discharged.Judge(layout, Discharged.At(-15)));
        Assert.Throws<ArgumentException>(() => Discharged.Judge(layout with { Supply = new HeldSupply(Pressure.FromBars(9)) }, sound));
    }

    [Fact]
    public void A_cancelled_judgement_says_so() => Assert.Throws<OperationCanceledException>(() =>
        DischargeFindings.Judge(Discharged.Layout(), Discharged.Result(Discharged.Sound), UnitSystem.Metric, new CancellationToken(canceled: true)));
}

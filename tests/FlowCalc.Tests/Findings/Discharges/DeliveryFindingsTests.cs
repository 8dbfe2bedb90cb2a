using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using UnitsNet;

namespace FlowCalc.Tests.Findings.Discharges;

public class DeliveryFindingsTests
{
    const string Attitudes = """ "format": 1, "cases": { "attitudes": [ { "name": "on the roof", "gravity": [0, 0, 1] } ] }, """;

    static DischargeCase Left(double kilograms) => Discharged.Sound with { LeftInBottle = Mass.FromKilograms(kilograms), LeftInTubes = Mass.FromKilograms(0) };

    static DischargeCase OutOfReach(double part, Attitude? attitude = null) => Discharged.At(20, attitude) with { OutOfReach = part };

    [Fact]
    public void Contents_of_which_95_per_cent_never_come_out_are_warned_of()
    {
        var finding = Assert.Single(Discharged.Judge(Discharged.Sound with { Time95 = null }).Findings);

        Assert.Equal((FindingCodes.ContentsNotDelivered, Severity.Warn), (finding.Code, finding.Severity));
        Assert.Equal(2.96 / 3, finding.Measured!.Value.Si, tolerance: 1e-12);
        Assert.Equal(0.95, finding.Limit!.Value.Si);
    }

    [Theory]
    [InlineData(0.089, Severity.Pass)]
    [InlineData(0.091, Severity.Note)]
    [InlineData(0.149, Severity.Note)]
    [InlineData(0.151, Severity.Warn)]
    [InlineData(2.0, Severity.Warn)]
    public void Agent_left_behind_is_a_note_over_3_per_cent_and_a_warning_over_5(double kilograms, Severity severity) =>
        Assert.Equal(severity, Discharged.Judge(Left(kilograms)).Verdict);

    [Fact]
    public void What_bottle_and_tubes_keep_adds_up_over_all_bottles()
    {
        var two = Discharged.Layout(("\"volume\": \"4.2 L\"", "\"count\": 2, \"volume\": \"4.2 L\""));

        var finding = Discharged.Judge(two, Left(0.5) with { LeftInTubes = Mass.FromKilograms(0.1) }).Single(FindingCodes.AgentLeftBehind);

        Assert.Equal(0.1, finding.Measured!.Value.Si, tolerance: 1e-12);
        Assert.Contains("10 % of the contents stay behind, 0.5 kg in the bottle and 0.1 kg in the tubes, limit 5 %", finding.Message, StringComparison.Ordinal);
        Assert.Contains("14.1.4", finding.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void Agent_left_behind_fails_where_the_document_says_so() =>
        Assert.Equal(Severity.Fail, Discharged.Judge(Discharged.WithLimits("""{ "agent-left-behind": { "fail": 0.05 } }"""), Left(0.2)).Verdict);

    [Theory]
    [InlineData(0.029, Severity.Pass)]
    [InlineData(0.031, Severity.Warn)]
    public void Upright_a_dip_tube_that_uncovers_early_is_warned_of(double part, Severity severity)
    {
        var judgement = Discharged.Judge(OutOfReach(part));

        Assert.Equal(severity, judgement.Verdict);
        Assert.Equal(severity == Severity.Warn, judgement.Has(FindingCodes.DipTubeUncoversEarly));
    }

    [Theory]
    [InlineData(0.049, Severity.Pass)]
    [InlineData(0.051, Severity.Warn)]
    public void In_another_attitude_liquid_out_of_reach_is_warned_of_by_anothers_rule(double part, Severity severity)
    {
        var judgement = Discharged.Judge(OutOfReach(part, Discharged.OnTheRoof));

        Assert.Equal(severity, judgement.Verdict);
        if (severity == Severity.Warn) Assert.Contains("14.1.9", judgement.Single(FindingCodes.BottleBlindWhenInverted).Source, StringComparison.Ordinal);
    }

    [Fact]
    public void It_fails_where_the_document_states_the_attitudes()
    {
        var finding = Discharged.Judge(Discharged.Layout(("\"format\": 1,", Attitudes)), OutOfReach(0.2, Discharged.OnTheRoof)).Single(FindingCodes.BottleBlindWhenInverted);

        Assert.Equal(Severity.Fail, finding.Severity);
        Assert.StartsWith(DefaultLimits.StatedInTheDocument, finding.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void Stated_steps_of_a_blind_bottle_hold_as_they_stand()
    {
        var layout = Discharged.Layout(("\"format\": 1,", Attitudes + """ "limits": { "bottle-blind-when-inverted": { "warn": 0.1, "fail": 0.3 } }, """));

        Assert.Equal(Severity.Warn, Discharged.Judge(layout, OutOfReach(0.2, Discharged.OnTheRoof)).Verdict);
        Assert.Equal(Severity.Fail, Discharged.Judge(layout, OutOfReach(0.4, Discharged.OnTheRoof)).Verdict);
    }

    [Fact]
    public void A_bottle_that_gives_nothing_is_blind_and_starves_no_nozzle_besides()
    {
        var nothing = OutOfReach(1, Discharged.OnTheRoof) with { Zones = [new ZoneShare("engine", 0, 0.5)] };
        foreach (var point in new[] { Discharged.Left, Discharged.Right })
            nothing = nothing.With(point, nozzle => nozzle with { Arrival = null, Mass = Mass.Zero, Share = 0, LeastPressure = null, GreatestPressure = null, Surge = null });

        var finding = Assert.Single(Discharged.Judge(nothing).Findings);

        Assert.Equal((FindingCodes.BottleBlindWhenInverted, Severity.Warn), (finding.Code, finding.Severity));
        Assert.Contains("no nozzle gets any agent", finding.Message, StringComparison.Ordinal);
        // Even a limit that lets all stay behind does not hide it.
        Assert.True(Discharged.Judge(Discharged.WithLimits("""{ "bottle-blind-when-inverted": { "warn": 1 } }"""), nothing).Has(FindingCodes.BottleBlindWhenInverted));
    }

    [Theory]
    [InlineData(0.90, null, null)]
    [InlineData(0.89, Severity.Warn, null)]
    [InlineData(0.79, Severity.Fail, null)]
    [InlineData(1.11, null, Severity.Warn)]
    [InlineData(1.21, null, Severity.Fail)]
    public void Nozzles_are_held_by_the_mass_that_they_give(double part, Severity? starved, Severity? overfed)
    {
        var judgement = Discharged.Judge(Discharged.Sound.With(Discharged.Right, nozzle => nozzle with { Share = 0.5 * part }));

        Assert.Equal(starved, judgement.Findings.SingleOrDefault(finding => finding.Code == FindingCodes.StarvedNozzle)?.Severity);
        Assert.Equal(overfed, judgement.Findings.SingleOrDefault(finding => finding.Code == FindingCodes.OverfedNozzle)?.Severity);
    }

    [Fact]
    public void A_nozzle_that_liquid_never_reaches_fails()
    {
        var finding = Discharged.Judge(Discharged.Sound.With(Discharged.Right, nozzle => nozzle with { Arrival = null, Mass = Mass.Zero, Share = 0 })).Single(FindingCodes.StarvedNozzle);

        Assert.Equal((Severity.Fail, -1.0), (finding.Severity, finding.Measured!.Value.Si));
        Assert.Contains("right never gets liquid, where 50 % of the agent is wanted", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_nozzle_of_which_nothing_is_wanted_is_warned_of_by_its_share_of_the_whole() =>
        Assert.Equal(Severity.Warn, Discharged.Judge(Discharged.Sound.With(Discharged.Right, nozzle => nozzle with { WantedShare = 0 })).Single(FindingCodes.OverfedNozzle).Severity);

    [Theory]
    [InlineData(0.476, Severity.Pass)]
    [InlineData(0.474, Severity.Warn)]
    [InlineData(0.449, Severity.Fail)]
    public void Zones_are_held_by_the_mass_that_they_get(double share, Severity severity)
    {
        var judgement = Discharged.Judge(Discharged.Sound with { Zones = [new ZoneShare("engine", share, 0.5)] });

        Assert.Equal(severity, judgement.Verdict);
        if (severity != Severity.Pass) Assert.Equal(["engine"], judgement.Single(FindingCodes.StarvedZone).Where);
    }
}

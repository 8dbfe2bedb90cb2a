using FlowCalc.Findings;
using FlowCalc.Tests.Findings;

namespace FlowCalc.Tests.Circuits;

/// <summary>Each finding of a circuit: where it is found, and that it is not where nothing is wrong.</summary>
public class CircuitFindingsTests
{
    const string Strong = """{ "kind": "battery", "minus": "m", "plus": "p", "voltage": "12 V", "internalResistance": "50 mohm", "own": true }""";

    static readonly (string, string?)[] Sound = [("/source", Strong), ("/parts/out/crossSection", "\"2.5 mm2\""), ("/parts/back/crossSection", "\"2.5 mm2\"")];

    static Finding? Find(CircuitJudgement judgement, string code) => judgement.Findings.FirstOrDefault(finding => finding.Code == code);

    public static TheoryData<string, string, string?, Severity> Found => new()
    {
        { FindingCodes.LowFiringCurrent, "/source/internalResistance", "\"2 ohm\"", Severity.Warn },
        { FindingCodes.LowFiringCurrent, "/source/internalResistance", "\"4 ohm\"", Severity.Fail },
        { FindingCodes.WeakSource, "/source/internalResistance", "\"1.7 ohm\"", Severity.Note },
        { FindingCodes.WireDrop, "/parts/out/length", "\"10 m\"", Severity.Note },
        { FindingCodes.WireDrop, "/parts/out/length", "\"30 m\"", Severity.Warn },
        { FindingCodes.TestCurrentHigh, "/parts/lamp/resistance", "\"300 ohm\"", Severity.Fail },
        { FindingCodes.NoFireUnknown, "/parts/squib/noFire", null, Severity.Fail },
        { FindingCodes.FiresUnasked, "/parts/key/closedIn", "[\"armed\"]", Severity.Pass },
        { FindingCodes.FiresUnasked, "/parts/key/closedIn", "[\"test\", \"armed\"]", Severity.Fail },
        { FindingCodes.NothingFires, "/parts/key/closedIn", "[\"test\"]", Severity.Fail },
        { FindingCodes.LampDark, "/parts/lamp/lightsAt", "\"20 mA\"", Severity.Warn },
        { FindingCodes.FuseMayOpen, "/parts/F", """{ "kind": "fuse", "between": ["p", "a"], "rating": "0.5 A", "characteristic": "blade" }""", Severity.Pass },
        { FindingCodes.FaultUnseen, "/corrosion", "\"10 ohm\"", Severity.Warn },
    };

    [Theory]
    [MemberData(nameof(Found))]
    public void A_circuit_with_one_thing_wrong_is_found_out(string code, string pointer, string? value, Severity severity)
    {
        var finding = Find(CircuitDocument.Judge(CircuitDocument.Loop, [.. Sound, (pointer, value)]), code);

        Assert.Equal(severity, finding?.Severity ?? Severity.Pass);
    }

    [Fact]
    public void A_sound_circuit_has_nothing_but_notes_of_what_was_taken() =>
        Assert.Equal([FindingCodes.AssumptionMade], CircuitDocument.Judge(CircuitDocument.Loop, Sound).Findings.Select(finding => finding.Code));

    [Fact]
    public void A_low_current_says_which_term_takes_most()
    {
        var finding = Find(CircuitDocument.Judge(CircuitDocument.Loop, ("/parts/key/resistance", "\"40 mohm\"")), FindingCodes.LowFiringCurrent)!;

        Assert.Equal(Severity.Fail, finding.Severity);
        Assert.Contains("2.22 A", finding.Message, StringComparison.Ordinal);
        Assert.Contains("1.48 times", finding.Message, StringComparison.Ordinal);
        Assert.Contains("the source itself takes most", finding.Message, StringComparison.Ordinal);
        Assert.Equal(["squib"], finding.Where);
        Assert.Equal(2.25, finding.Limit!.Value.Si, tolerance: 1e-9);
    }

    // 1.5 times all-fire would need 9/2.25 = 4 Ω in the loop, 0.05 less than there are: one size more in both wires takes less copper than two in one.
    [Fact]
    public void A_thicker_wire_is_the_cure_and_the_changed_document_proves_it()
    {
        (string, string?)[] edits = [("/parts/key/resistance", "\"40 mohm\"")];
        var finding = Find(CircuitDocument.Judge(CircuitDocument.Loop, edits), FindingCodes.LowFiringCurrent)!;

        var cure = finding.Cure!;
        Assert.True(cure.Clears);
        Assert.Equal([("circuit/parts/out/crossSection", "1 mm2"), ("circuit/parts/back/crossSection", "1 mm2")], cure.Changes.Select(change => (change.Path, change.To!.Words)));
        var json = CircuitDocument.Json(CircuitDocument.Loop, edits);
        var changed = CureProof.Changed(json, cure);
        var result = FlowCalc.Circuits.CircuitAnalysis.Of(changed.Circuit!, TestContext.Current.CancellationToken);
        Assert.Equal(cure.After.Si, result.Presses[0].Currents.Source, tolerance: 1e-12);
        var judged = CircuitFindings.Judge(changed, result, FlowCalc.Quantities.UnitSystem.Metric, TestContext.Current.CancellationToken);
        Assert.Equal(cure.Outcome.Verdict, judged.Verdict);
        Assert.DoesNotContain(judged.Findings, one => one is { Code: FindingCodes.LowFiringCurrent, Severity: Severity.Fail });
    }

    // (14.5/0.03 − 2)/0.95 = 506.67 Ω is the least; the next of the row of preferred numbers is 560.
    [Fact]
    public void A_lamp_that_lets_too_much_pass_is_cured_by_the_next_preferred_resistor()
    {
        var finding = Find(CircuitDocument.Judge(CircuitDocument.Loop, [.. Sound, ("/source/highestVoltage", "\"14.5 V\""), ("/parts/lamp/resistance", "\"330 ohm\"")]), FindingCodes.TestCurrentHigh)!;

        Assert.Equal("560 ohm", finding.Cure!.Changes.Single().To!.Words);
        Assert.True(finding.Cure.After.Si < 0.03);
        Assert.Contains("the diode of lamp shorted", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_no_wire_helps_the_message_says_how_many_changes_were_tried()
    {
        var finding = Find(CircuitDocument.Judge(CircuitDocument.Loop, ("/source/internalResistance", "\"8 ohm\"")), FindingCodes.LowFiringCurrent)!;

        Assert.Null(finding.Cure);
        Assert.Matches("no cure found, \\d+ changes tried\\.$", finding.Message);
    }

    [Fact]
    public void A_coil_below_85_per_cent_of_its_voltage_fails()
    {
        const string coil = """{ "kind": "actuator", "between": ["x", "y"], "type": "solenoid", "resistance": "8 ohm", "ratedVoltage": "12 V" }""";

        Assert.Equal(Severity.Fail, Find(CircuitDocument.Judge(CircuitDocument.Loop, [.. Sound, ("/parts/squib", coil), ("/source/internalResistance", "\"2 ohm\"")]), FindingCodes.LowCoilVoltage)!.Severity);
        Assert.Null(Find(CircuitDocument.Judge(CircuitDocument.Loop, [.. Sound, ("/parts/squib", coil)]), FindingCodes.LowCoilVoltage));
    }

    [Fact]
    public void A_race_car_with_one_push_and_no_source_of_its_own_is_warned()
    {
        (string, string?)[] raced = [.. Sound, ("//application", "\"motorsport\""), ("/source/own", "false")];

        var judged = CircuitDocument.Judge(CircuitDocument.Loop, raced);

        Assert.Equal(Severity.Warn, Find(judged, FindingCodes.SingleTrigger)!.Severity);
        Assert.Equal(Severity.Warn, Find(judged, FindingCodes.NoOwnSource)!.Severity);
        var two = CircuitDocument.Judge(CircuitDocument.Loop, [.. raced, ("/parts/outside", """{ "kind": "push", "between": ["a", "t"], "purpose": "fire" }"""), ("/source/own", "true")]);
        Assert.Null(Find(two, FindingCodes.SingleTrigger));
        Assert.Null(Find(two, FindingCodes.NoOwnSource));
        Assert.Equal(Severity.Fail, Find(CircuitDocument.Judge(CircuitDocument.Loop, [.. Sound, ("//limits", """{ "single-trigger": { "fail": 2 } }""")]), FindingCodes.SingleTrigger)!.Severity);
    }

    [Fact]
    public void A_fuse_that_is_not_sure_to_hold_the_pulse_is_warned_of_and_one_without_times_noted()
    {
        const string small = """{ "kind": "fuse", "between": ["m", "g"], "rating": "1 A", "characteristic": "blade", "resistance": "0.1 ohm" }""";
        (string, string?)[] fused = [.. Sound, ("/parts/back/between", """["y", "g"]"""), ("/parts/F", small)];

        Assert.Null(Find(CircuitDocument.Judge(CircuitDocument.Loop, fused), FindingCodes.FuseMayOpen));
        Assert.Equal(Severity.Warn, Find(CircuitDocument.Judge(CircuitDocument.Loop, [.. fused, ("/parts/squib/pulse", "\"100 ms\"")]), FindingCodes.FuseMayOpen)!.Severity);
        Assert.Equal(Severity.Note, Find(CircuitDocument.Judge(CircuitDocument.Loop, [.. fused, ("/parts/F/characteristic", null)]), FindingCodes.FuseMayOpen)!.Severity);
    }

    [Fact]
    public void A_small_capacitor_holds_too_little()
    {
        const string capacitor = """{ "kind": "capacitor", "minus": "m", "plus": "p", "voltage": "12 V", "internalResistance": "100 mohm", "capacitance": "CAP" }""";
        CircuitJudgement With(string size) => CircuitDocument.Judge(CircuitDocument.Loop,
            [.. Sound, ("/source", capacitor.Replace("CAP", size, StringComparison.Ordinal)), ("/parts/squib/allFireEnergy", "\"40 mJ\"")]);

        Assert.Equal(Severity.Fail, Find(With("500 µF"), FindingCodes.FiringEnergyLow)!.Severity);
        Assert.Equal(Severity.Fail, Find(With("500 µF"), FindingCodes.FiringPulseShort)!.Severity);
        Assert.Null(Find(With("10 mF"), FindingCodes.FiringEnergyLow));
        Assert.Null(Find(With("10 mF"), FindingCodes.FiringPulseShort));
    }

    [Fact]
    public void A_circuit_that_a_touch_of_the_chassis_fires_fails()
    {
        var judged = CircuitDocument.Judge("""
            { "chassis": "m", "source": { "kind": "battery", "minus": "m", "plus": "p", "voltage": "12 V", "internalResistance": "20 mohm" },
              "parts": {
                "key": { "kind": "switch", "between": ["p", "k"], "closedIn": ["armed"] },
                "squib": { "kind": "actuator", "between": ["k", "x"], "type": "pyrotechnic", "resistance": "2 ohm", "allFire": "1.5 A", "noFire": "0.3 A" },
                "fire": { "kind": "push", "between": ["x", "m"], "purpose": "fire" } } }
            """);

        Assert.Equal(["x"], Find(judged, FindingCodes.FaultFires)!.Where);
        Assert.Null(Find(CircuitDocument.Judge(CircuitDocument.Loop, [.. Sound, ("/chassis", "\"m\"")]), FindingCodes.FaultFires));
    }

    [Fact]
    public void Actuators_in_series_are_warned_of_and_in_parallel_not()
    {
        const string second = """{ "kind": "actuator", "between": ["z", "y"], "type": "pyrotechnic", "resistance": "1 ohm", "allFire": "1.5 A", "noFire": "0.3 A" }""";

        Assert.Equal(2, CircuitDocument.Judge(CircuitDocument.Loop, [.. Sound, ("/parts/squib/between", """["x", "z"]"""), ("/parts/other", second)]).Findings.Count(one => one.Code == FindingCodes.FiresInSeries));
        Assert.Null(Find(CircuitDocument.Judge(CircuitDocument.Loop, [.. Sound, ("/parts/other", second.Replace("\"z\"", "\"x\"", StringComparison.Ordinal))]), FindingCodes.FiresInSeries));
    }

    [Fact]
    public void A_layout_without_a_circuit_and_an_answer_of_another_are_refused()
    {
        var layout = CircuitDocument.Read(CircuitDocument.Loop);
        var two = CircuitDocument.Solve(CircuitDocument.Loop, ("/parts/other", """{ "kind": "actuator", "between": ["x", "y"], "type": "pyrotechnic", "resistance": "1 ohm", "allFire": "1.5 A" }"""));

        Assert.Throws<ArgumentException>(() => CircuitFindings.Judge(layout with { Circuit = null }, two, FlowCalc.Quantities.UnitSystem.Metric, CancellationToken.None));
        Assert.Throws<ArgumentException>(() => CircuitFindings.Judge(layout, two, FlowCalc.Quantities.UnitSystem.Metric, CancellationToken.None));
    }
}

using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Tests.Flows;
using UnitsNet;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Tests.Findings.Discharges;

/// <summary>A bottle of 3 kg of water with two nozzles, a discharge of it on which nothing is found, and edits of both.</summary>
static class Discharged
{
    /// <summary>Indices of the nozzles among the points.</summary>
    public const int Left = 2, Right = 3;

    public const string Json = """
        {
          "format": 1, "agent": "water", "ambientPressure": "1 bara",
          "supply": { "bottle": { "volume": "4.2 L", "fill": "3 kg", "chargePressure": "14 bar", "chargeTemperature": "20 °C", "workingPressure": "25 bar" } },
          "zones": { "engine": { "share": 0.5 } },
          "points": [
            { "id": "source", "kind": "supply" },
            { "id": "T", "kind": "tee", "fedThrough": "branch", "body": "smooth" },
            { "id": "left", "kind": "nozzle", "zone": "engine", "pressureRange": ["3 bar", "15 bar"], "orifice": { "diameter": "1.5 mm", "dischargeCoefficient": 0.82 } },
            { "id": "right", "kind": "nozzle", "orifice": { "diameter": "1.5 mm", "dischargeCoefficient": 0.82 } }
          ],
          "tubes": { "feed": { "bore": "6 mm", "roughness": "1.5 µm", "workingPressure": "40 bar" } },
          "runs": [
            { "id": "A", "from": "source", "to": "T", "tube": "feed", "length": "1 m" },
            { "id": "L", "from": "T", "to": "left", "tube": "feed", "length": "1 m" },
            { "id": "R", "from": "T", "to": "right", "tube": "feed", "length": "1 m" }
          ]
        }
        """;

    public static readonly Attitude Upright = new("upright", new(0, 0, -1));
    public static readonly Attitude OnTheRoof = new("on the roof", new(0, 0, 1));

    /// <summary>95 % of the contents in 10 s to 30 s.</summary>
    public static readonly Requirement Rule = new(0.95, true, null, Seconds(10), Seconds(30));

    public static readonly DischargeCase Sound = new()
    {
        Temperature = Celsius(20),
        Attitude = Upright,
        StartPressure = Pressure.FromBars(15),
        LiquidPart = 0.7,
        Time95 = Seconds(15),
        RequiredTime = Seconds(15),
        LiquidEnd = Seconds(16),
        End = Seconds(20),
        LeftInBottle = Mass.FromKilograms(0.02),
        LeftInTubes = Mass.FromKilograms(0.02),
        OutOfReach = 0.006,
        Nozzles = [Nozzle(Left), Nozzle(Right)],
        Zones = [new ZoneShare("engine", 0.5, 0.5)],
    };

    /// <summary>The layout, with pieces of its text exchanged.</summary>
    public static Layout Layout(params (string From, string To)[] edits) => Documents.Read(edits.Aggregate(Json, (json, edit) => Pair.Edit(json, edit.From, edit.To)));

    public static Layout WithLimits(string limits) => Layout(("\"format\": 1,", $"\"format\": 1, \"limits\": {limits},"));

    public static Duration Seconds(double seconds) => Duration.FromSeconds(seconds);

    public static Temperature Celsius(double degrees) => Temperature.FromDegreesCelsius(degrees);

    /// <summary>A case like the sound one at another temperature and in another attitude.</summary>
    public static DischargeCase At(double celsius, Attitude? attitude = null) => Sound with { Temperature = Celsius(celsius), Attitude = attitude ?? Upright };

    /// <summary>A case of which one nozzle is another.</summary>
    public static DischargeCase With(this DischargeCase one, int point, Func<NozzleDischarge, NozzleDischarge> change) =>
        one with { Nozzles = [.. one.Nozzles.Select(nozzle => nozzle.Point == point ? change(nozzle) : nozzle)] };

    public static DischargeCase Failing(this DischargeCase one, DischargeFailureKind kind) =>
        one with
        {
            Failure = new(kind, "Said by the solver."),
            StartPressure = kind is DischargeFailureKind.BelowFreezing or DischargeFailureKind.OutsideData ? null : one.StartPressure,
            Nozzles = [],
            Zones = [],
            Time95 = null,
            RequiredTime = null,
        };

    public static DischargeJudgement Judge(params DischargeCase[] cases) => Judge(Layout(), cases);

    public static DischargeJudgement Judge(Layout layout, params DischargeCase[] cases) => Judge(layout, Result(cases));

    public static DischargeJudgement Judge(Layout layout, DischargeResult result, UnitSystem units = UnitSystem.Metric) =>
        DischargeFindings.Judge(layout, result, units, TestContext.Current.CancellationToken);

    public static DischargeResult Result(params DischargeCase[] cases) => new([.. cases], null, false, []);

    /// <summary>Cases held against <see cref="Rule"/>.</summary>
    public static DischargeJudgement Judge(bool isStated, params DischargeCase[] cases) => Judge(Layout(), Result(cases) with { Requirement = Rule, IsRequirementStated = isStated });

    public static Finding Single(this DischargeJudgement judgement, string code) => Assert.Single(judgement.Findings, finding => finding.Code == code);

    public static bool Has(this DischargeJudgement judgement, string code) => judgement.Findings.Any(finding => finding.Code == code);

    static NozzleDischarge Nozzle(int point) => new(
        point, Seconds(0.5), Mass.FromKilograms(1.48), 0.5, 0.5, Seconds(15), Seconds(16), MassFlow.FromKilogramsPerSecond(0.1),
        Pressure.FromBars(5), Pressure.FromBars(13), Pressure.FromBars(20));
}

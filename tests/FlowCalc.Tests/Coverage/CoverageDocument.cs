using FlowCalc.Coverage;
using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Tests.Layouts;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Tests.Coverage;

/// <summary>Documents for the tests: two nozzles over a table, and a halocarbon in an engine space.</summary>
static class CoverageDocument
{
    /// <summary>Two nozzles half a metre over a table of a square metre, water held at 10 bar.</summary>
    public const string Table = """
        {
          "format": 1, "agent": "water", "supply": { "pressure": "10 bar" },
          "zones": { "bench": {}, "aisle": { "occupied": true } },
          "nozzles": { "cone": { "kFactor": "1 L/min/bar^0.5", "spray": { "angle": "60°", "range": ["0.2 m", "1 m"] } } },
          "points": [
            { "id": "s", "kind": "supply", "at": ["0 m", "0 m", "1 m"] }, { "id": "t", "kind": "junction", "at": ["0.5 m", "0.5 m", "1 m"] },
            { "id": "left", "kind": "nozzle", "nozzle": "cone", "zone": "bench", "at": ["0.5 m", "0.8 m", "0.5 m"], "aim": [0, 0, -1] },
            { "id": "right", "kind": "nozzle", "nozzle": "cone", "zone": "bench", "at": ["0.5 m", "0.2 m", "0.5 m"], "aim": ["0.5 m", "0.2 m", "0 m"] },
            { "id": "far", "kind": "nozzle", "nozzle": "cone", "zone": "aisle", "at": ["3 m", "0.2 m", "0.5 m"], "aim": [0, 0, -2] }
          ],
          "runs": [
            { "from": "s", "to": "t", "bore": "8 mm" }, { "from": "t", "to": "left", "bore": "6 mm" }, { "from": "t", "to": "right", "bore": "6 mm" }, { "from": "t", "to": "far", "bore": "6 mm" }
          ],
          "coverage": {
            "surfaces": { "table": { "zone": "bench", "corner": ["0 m", "0 m", "0 m"], "edges": [["1 m", "0 m", "0 m"], ["0 m", "1 m", "0 m"]] } },
            "targets": { "vice": { "zone": "bench", "at": ["0.5 m", "0.2 m", "0 m"] }, "drill": { "zone": "bench", "at": ["0.5 m", "0.85 m", "0 m"] } },
            "persons": { "fitter": { "zone": "bench", "at": ["1.2 m", "0.5 m", "0.9 m"] } },
            "bodies": { "shelf": { "from": ["2 m", "2 m", "0 m"], "to": ["3 m", "3 m", "1 m"] } }
          }
        }
        """;

    /// <summary>HFC-227ea under nitrogen in an engine space of 2.5 m³ and a locker of 0.5 m³.</summary>
    public const string Space = """
        {
          "format": 1, "application": "marine-engine-space", "agent": "HFC-227ea",
          "supply": { "bottle": { "volume": "6 L", "fill": "4 kg", "chargePressure": "25 bar" } },
          "zones": {
            "engine": { "volume": "2.5 m3", "temperatures": ["0 °C", "40 °C"], "airflow": "0 m3/s", "openings": "0 m2", "hazard": "class-B" },
            "locker": { "volume": "0.5 m3", "temperatures": ["0 °C", "40 °C"], "airflow": "0 m3/s", "openings": "0 m2", "hazard": "class-A" }
          },
          "points": [
            { "id": "s", "kind": "supply" }, { "id": "t", "kind": "junction" },
            { "id": "a", "kind": "nozzle", "orifice": { "diameter": "6 mm", "dischargeCoefficient": 0.8 }, "zone": "engine" },
            { "id": "b", "kind": "nozzle", "orifice": { "diameter": "6 mm", "dischargeCoefficient": 0.8 }, "zone": "engine" },
            { "id": "c", "kind": "nozzle", "orifice": { "diameter": "4 mm", "dischargeCoefficient": 0.8 }, "zone": "locker" }
          ],
          "runs": [
            { "from": "s", "to": "t", "bore": "12 mm", "length": "1 m" }, { "from": "t", "to": "a", "bore": "10 mm", "length": "1 m" },
            { "from": "t", "to": "b", "bore": "10 mm", "length": "1 m" }, { "from": "t", "to": "c", "bore": "8 mm", "length": "1 m" }
          ],
          "cases": { "temperatures": ["20 °C"] }
        }
        """;

    /// <summary>A document changed in places, and read.</summary>
    public static Layout Read(string json, params (string Pointer, string? Value)[] edits)
    {
        var reading = Specimen.Read(edits.Aggregate(json, (text, edit) => Specimen.With(text, edit.Pointer, edit.Value)));
        Assert.Empty(reading.Faults);
        return reading.Layout!;
    }

    /// <summary>Its coverage, with the discharge of a bottle or the flow of a held supply.</summary>
    public static CoverageResult Solve(string json, params (string Pointer, string? Value)[] edits) => Judged(Read(json, edits)).Result;

    /// <summary>What is found in it, with cures.</summary>
    public static CoverageJudgement Judge(string json, params (string Pointer, string? Value)[] edits) => Judged(Read(json, edits)).Judgement;

    public static (CoverageResult Result, CoverageJudgement Judgement) Judged(Layout layout)
    {
        var cancel = TestContext.Current.CancellationToken;
        var discharge = layout.Supply is BottleSupply ? LayoutDischarge.Solve(layout, cancel) : null;
        var flow = discharge is null ? SteadyFlow.Solve(layout, cancel) : null;
        var result = LayoutCoverage.Solve(layout, discharge, flow, cancel);
        return (result, CoverageFindings.JudgeWithCures(layout, result, discharge, flow, UnitSystem.Metric, TaskScheduler.Default, cancel));
    }

    /// <summary>The one finding of a code.</summary>
    public static Finding Single(this CoverageJudgement judgement, string code) => Assert.Single(judgement.Findings, finding => finding.Code == code);

    public static bool Has(this CoverageJudgement judgement, string code) => judgement.Findings.Any(finding => finding.Code == code);
}

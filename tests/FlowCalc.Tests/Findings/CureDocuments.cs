namespace FlowCalc.Tests.Findings;

/// <summary>A document for each finding that a single change can clear: it fails there, and there is such a change.</summary>
static class CureDocuments
{
    const string Tubes = """
        "tubes": {
          "trunk": { "outsideDiameter": "10 mm", "wall": "1 mm", "minimumBendRadius": "35 mm" },
          "feed":  { "outsideDiameter": "8 mm", "wall": "1 mm", "minimumBendRadius": "28 mm" },
          "drop":  { "outsideDiameter": "5 mm", "wall": "1 mm", "minimumBendRadius": "18 mm" }
        },
        """;

    const string Hole = "\"orifice\": { \"diameter\": \"1.5 mm\", \"dischargeCoefficient\": 0.82 }";

    const string Holes = "\"orifice\": { \"diameter\": \"2.5 mm\", \"dischargeCoefficient\": 0.8, \"count\": 2 }";

    const string WithDipTube = """, "outlet": { "dipTube": { "bore": "10 mm", "length": "308 mm" }, "valveKv": "2.4 m3/h" }""";

    /// <summary>What fails on a steady flow, by code, with what the cure changes.</summary>
    public static IEnumerable<(string Code, string Path, string Json)> OfFlow =>
    [
        ("starved-nozzle", "runs/R/tube", Pair.With(Pair.Right, Pair.LongThinRight.Replace("2 m", "6 m", StringComparison.Ordinal))),
        ("uneven-branch", "runs/R/tube", Pair.With(Pair.Right, Pair.LongThinRight.Replace("2 m", "6 m", StringComparison.Ordinal))),
        ("starved-zone", "runs/R/tube", Pair.Edit(Pair.Edit(Pair.With(Pair.Right, Pair.LongThinRight), "\"points\":", "\"zones\": { \"z\": { \"share\": 0.5 } }, \"points\":"), "\"id\": \"right\",", "\"id\": \"right\", \"zone\": \"z\",")),
        ("overfed-nozzle", "points/right/orifice/diameter", Pair.With("\"id\": \"right\",", "\"id\": \"right\", \"share\": 0.35,")),
        ("starved-nozzle", "points/right/orifice/diameter", Pair.With("\"id\": \"right\",", "\"id\": \"right\", \"share\": 0.8,")),
        ("starved-nozzle", "points/right/nozzle", Named),
        ("starved-nozzle", "points/T/fedThrough", Turned),
        ("starved-nozzle", "supply/pressure", Pair.Edit(Pair.With("\"8 bar\"", "\"0.5 bar\""), Pair.Right, """ "to": "right", "tube": "feed", "length": "8 m", "rise": "8 m" """)),
        ("pressure-spread", "runs/R/tube", Pair.Edit(Pair.With(Pair.Right, Pair.LongThinRight.Replace("2 m", "8 m", StringComparison.Ordinal)), "\"format\": 1,", "\"format\": 1, \"limits\": { \"pressure-spread\": { \"fail\": 2 } },")),
        ("velocity-high", "runs/R/tube", Pair.Edit(Pair.With(Pair.Right, """ "to": "right", "tube": "drop", "length": "0.1 m" """), "\"format\": 1,", "\"format\": 1, \"limits\": { \"velocity-high\": { \"fail\": \"5 m/s\" } },")),
        ("bend-too-tight", "runs/R/bends/0/radius", Pair.With(Pair.Right, """ "to": "right", "tube": "feed", "length": "1 m", "bends": [{ "angle": "90°", "radius": "20 mm" }] """)),
        ("bend-too-tight", "runs/R/bendRadius", Pair.Routed("feed", "20 mm")),
        ("bends-overlap", "runs/R/bendRadius", Pair.Routed("drop", "300 mm", left: "40 mm").Replace("[\"1 m\", \"-1 m\", \"0 m\"], [\"2 m\", \"-1 m\", \"0 m\"]", "[\"1 m\", \"-1 m\", \"0 m\"], [\"1.4 m\", \"-1 m\", \"0 m\"], [\"1.4 m\", \"-1 m\", \"0.5 m\"]", StringComparison.Ordinal)),
        ("bends-interact", "runs/R/bendRadius", Pair.Edit(Pair.Routed("feed", "80 mm", left: "40 mm").Replace("[\"1 m\", \"-1 m\", \"0 m\"], [\"2 m\", \"-1 m\", \"0 m\"]", "[\"1 m\", \"-1 m\", \"0 m\"], [\"1.18 m\", \"-1 m\", \"0 m\"], [\"1.18 m\", \"-1 m\", \"0.5 m\"]", StringComparison.Ordinal),
            "\"format\": 1,", "\"format\": 1, \"limits\": { \"bends-interact\": { \"fail\": 4 } },")),
        ("bottle-liquid-full", "supply/bottle/fill", Bottled(temperature: "60 °C", fill: "4.19 kg", limits: "\"bottle-liquid-full\": { \"fail\": 0.99 }")),
        ("over-working-pressure", "supply/bottle/chargePressure", Bottled(more: ", \"workingPressure\": \"12 bar\"")),
        ("over-working-pressure", "runs/A/tube", Bottled().Replace("\"trunk\": { ", "\"strong\": { \"outsideDiameter\": \"10 mm\", \"wall\": \"1.5 mm\", \"workingPressure\": \"80 bar\" }, \"trunk\": { \"workingPressure\": \"12 bar\", ", StringComparison.Ordinal)),
        ("below-vapour-pressure", "supply/pressure", Siphon),
        ("tee-port-off-angle", "runs/R/leaves", OffPort),
    ];

    /// <summary>What fails in a discharge, by code, with what the cure changes.</summary>
    public static IEnumerable<(string Code, string Path, string Json)> OfDischarge =>
    [
        ("starved-nozzle", "runs/R/tube", Bottled(right: "\"tube\": \"drop\", \"length\": \"6 m\"")),
        ("starved-zone", "runs/R/tube", Bottled(right: "\"tube\": \"drop\", \"length\": \"3 m\"").Replace("\"id\": \"right\",", "\"id\": \"right\", \"zone\": \"z\",", StringComparison.Ordinal).Replace("\"points\":", "\"zones\": { \"z\": { \"share\": 0.5 } }, \"points\":", StringComparison.Ordinal)),
        ("overfed-nozzle", "points/right/orifice/diameter", Bottled().Replace("\"id\": \"right\",", "\"id\": \"right\", \"share\": 0.35,", StringComparison.Ordinal)),
        ("discharge-too-slow", "supply/bottle/chargePressure", Bottled(requirement: "[\"1 s\", \"20 s\"]")),
        ("discharge-too-fast", "runs/A/tube", Bottled(requirement: "[\"40 s\", \"80 s\"]", more: WithDipTube.Replace("308 mm\"", "308 mm\", \"follows\": true", StringComparison.Ordinal))),
        ("cold-underpowered", "supply/bottle/chargePressure", Bottled(requirement: "[\"1 s\", \"28 s\"]", cases: "\"temperatures\": [\"60 °C\", \"2 °C\"]")),
        ("bottle-blind-when-inverted", "supply/bottle/outlet/dipTube/follows", Bottled(more: WithDipTube, cases: "\"attitudes\": [ { \"name\": \"upright\", \"gravity\": [0, 0, -1] }, { \"name\": \"roof\", \"gravity\": [0, 0, 1] } ]")),
        ("dip-tube-uncovers-early", "supply/bottle/outlet/dipTube/follows", Bottled(more: WithDipTube.Replace("308 mm", "250 mm", StringComparison.Ordinal), limits: "\"dip-tube-uncovers-early\": { \"fail\": 0.05 }")),
        ("agent-left-behind", "supply/bottle/outlet/dipTube/follows", Bottled(more: WithDipTube.Replace("308 mm", "250 mm", StringComparison.Ordinal), limits: "\"agent-left-behind\": { \"fail\": 0.05 }")),
        ("late-arrival", "supply/bottle/chargePressure", Bottled(right: "\"tube\": \"trunk\", \"length\": \"6 m\"", limits: "\"late-arrival\": { \"fail\": \"0.4 s\" }")),
        ("hot-overpressure", "supply/bottle/chargePressure", Bottled(more: ", \"workingPressure\": \"16 bar\"")),
        ("bottle-liquid-full", "supply/bottle/fill", Bottled(fill: "4.2 kg", limits: "\"bottle-liquid-full\": { \"fail\": 0.99 }")),
        ("no-driving-pressure", "supply/bottle/chargePressure", Bottled(more: ", \"outlet\": { \"burstPressure\": \"14.5 bar\" }", cases: "\"temperatures\": [\"20 °C\"]")),
        ("over-working-pressure", "runs/A/tube", Bottled().Replace("\"trunk\": { ", "\"strong\": { \"outsideDiameter\": \"10 mm\", \"wall\": \"1.5 mm\", \"workingPressure\": \"80 bar\" }, \"trunk\": { \"workingPressure\": \"15 bar\", ", StringComparison.Ordinal)),
        ("hot-overpressure", "supply/bottle/fill", Expanding("carbon-dioxide", "\"volume\": \"10 L\", \"fill\": \"8 kg\", \"workingPressure\": \"190 bar\"")),
        ("agent-in-tube", "runs/A/tube", Expanding("carbon-dioxide", "\"volume\": \"1 L\", \"fill\": \"0.6 kg\"", "\"tube\": \"wide\", \"length\": \"9 m\"").Replace("\"temperatures\": [\"20 °C\", \"55 °C\"]", "\"temperatures\": [\"20 °C\"]", StringComparison.Ordinal)),
        ("discharge-too-slow", "points/n/orifice/diameter", Expanding("nitrogen", "\"volume\": \"10 L\", \"chargePressure\": \"60 bar\"").Replace("\"format\": 1,", "\"format\": 1, \"requirement\": { \"part\": 0.9, \"of\": \"contents\", \"within\": [\"0 s\", \"9 s\"] },", StringComparison.Ordinal)),
        ("hot-overpressure", "supply/bottle/chargePressure", Expanding("HFC-227ea", "\"volume\": \"5 L\", \"fill\": \"4 kg\", \"chargePressure\": \"25 bar\", \"workingPressure\": \"30 bar\"")),
        ("starved-nozzle", "runs/C/tube", Racing("HFC-227ea", "\"volume\": \"8 L\", \"fill\": \"7 kg\", \"chargePressure\": \"25 bar\"")),
        ("overfed-nozzle", "runs/C/tube", Racing("carbon-dioxide", "\"volume\": \"8 L\", \"fill\": \"5.4 kg\"")),
        ("starved-nozzle", "runs/C/tube", Racing("FK-5-1-12", "\"volume\": \"8 L\", \"fill\": \"8 kg\", \"chargePressure\": \"25 bar\"")),
        ("starved-nozzle", "runs/C/tube", Racing("IG-541", "\"volume\": \"8 L\", \"chargePressure\": \"150 bar\"")),
    ];

    /// <summary>A nozzle far above what the supply can lift.</summary>
    public static string OutOfReach => Pair.Edit(Pair.With("\"8 bar\"", "\"0.05 bar\""), Pair.Right, """ "to": "right", "tube": "drop", "length": "8 m", "rise": "8 m" """);

    /// <summary>A case in which the agent is ice.</summary>
    public static string Frozen => Bottled(cases: "\"temperatures\": [\"20 °C\", \"-10 °C\"]");

    /// <summary>A nozzle of the document's, which leaves its name behind where it is drilled and keeps the range that it had by it.</summary>
    static string Named => Pair.Edit(
        Pair.With("\"id\": \"right\", \"kind\": \"nozzle\", " + Hole, "\"id\": \"right\", \"kind\": \"nozzle\", \"share\": 0.8, \"nozzle\": \"cone\""),
        "\"points\":", $"\"nozzles\": {{ \"cone\": {{ {Hole}, \"pressureRange\": [\"1 bar\", \"16 bar\"] }} }}, \"points\":");

    /// <summary>A bullhead whose legs divide evenly, where the straight leg of a tee fed through its run starves the branch.</summary>
    static string Turned => """
        {
          "format": 1, "agent": "water", "ambientPressure": "1 bara", "temperature": "20 °C", "supply": { "pressure": "8 bar" }, "limits": { "starved-nozzle": { "warn": 0.05, "fail": 0.1 } },
          "points": [
            { "id": "S", "kind": "supply" }, { "id": "T", "kind": "tee", "fedThrough": "run", "body": "smooth" },
            { "id": "a", "kind": "nozzle", "kFactor": "20 L/min/bar^0.5" }, { "id": "b", "kind": "nozzle", "kFactor": "20 L/min/bar^0.5" }
          ],
          "runs": [
            { "id": "F", "from": "S", "to": "T", "bore": "8 mm", "length": "0.1 m" },
            { "id": "A", "from": "T", "to": "a", "leaves": "run", "bore": "8 mm", "length": "0.1 m" },
            { "id": "B", "from": "T", "to": "b", "leaves": "branch", "bore": "8 mm", "length": "0.1 m" }
          ]
        }
        """;

    /// <summary>A tube that goes so far up that the liquid is torn apart on its way down again.</summary>
    static string Siphon => """
        {
          "format": 1, "agent": "water", "ambientPressure": "1 bara", "temperature": "20 °C", "supply": { "pressure": "0.5 bar" },
          "points": [ { "id": "S", "kind": "supply" }, { "id": "top", "kind": "junction" }, { "id": "n", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5" } ],
          "runs": [
            { "id": "up", "from": "S", "to": "top", "bore": "8 mm", "length": "15.5 m", "rise": "15.5 m" },
            { "id": "down", "from": "top", "to": "n", "bore": "8 mm", "length": "30 m", "rise": "-30 m" }
          ]
        }
        """;

    /// <summary>A tee whose straight outlet is told to leave by the branch.</summary>
    static string OffPort => """
        {
          "format": 1, "agent": "water", "ambientPressure": "1 bara", "temperature": "20 °C", "supply": { "pressure": "8 bar" },
          "limits": { "tee-port-off-angle": { "fail": "15 deg" } },
          "points": [
            { "id": "S", "kind": "supply", "at": ["0 m", "0 m", "0 m"] }, { "id": "T", "kind": "tee", "fedThrough": "run", "body": "smooth", "at": ["1 m", "0 m", "0 m"] },
            { "id": "a", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5", "at": ["2 m", "0 m", "0 m"] }, { "id": "b", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5", "at": ["1 m", "1 m", "0 m"] }
          ],
          "runs": [
            { "id": "A", "from": "S", "to": "T", "bore": "8 mm" },
            { "id": "L", "from": "T", "to": "a", "leaves": "branch", "bore": "8 mm" },
            { "id": "R", "from": "T", "to": "b", "leaves": "run", "bore": "8 mm" }
          ]
        }
        """;

    static string Bottled(string right = "\"tube\": \"feed\", \"length\": \"1 m\"", string fill = "3 kg", string more = "", string? requirement = null, string? cases = null, string? limits = null, string temperature = "20 °C") => $$"""
        {
          "format": 1, "agent": "water", "ambientPressure": "1 bara", "temperature": "{{temperature}}",
          {{(requirement is null ? "" : $$""" "requirement": { "part": 0.9, "of": "contents", "within": {{requirement}} },""")}}
          {{(limits is null ? "" : $$""" "limits": { {{limits}} },""")}}
          "cases": { {{cases ?? "\"temperatures\": [\"20 °C\", \"60 °C\"]"}} },
          "supply": { "bottle": { "volume": "4.3 L", "fill": "{{fill}}", "chargePressure": "14 bar"{{more}} } },
          {{Tubes}}
          "points": [
            { "id": "S", "kind": "supply" }, { "id": "T", "kind": "tee", "fedThrough": "branch", "body": "smooth" },
            { "id": "left", "kind": "nozzle", {{Hole}} }, { "id": "right", "kind": "nozzle", {{Hole}} }
          ],
          "runs": [
            { "id": "A", "from": "S", "to": "T", "tube": "trunk", "length": "1 m" },
            { "id": "L", "from": "T", "to": "left", "tube": "feed", "length": "1 m" },
            { "id": "R", "from": "T", "to": "right", {{right}} }
          ]
        }
        """;

    static string Expanding(string agent, string bottle, string trunk = "\"tube\": \"narrow\", \"length\": \"3 m\"") => $$"""
        {
          "format": 1, "agent": "{{agent}}", "cases": { "temperatures": ["20 °C", "55 °C"] },
          "supply": { "bottle": { {{bottle}} } },
          "tubes": { "wide": { "bore": "14 mm" }, "narrow": { "bore": "8 mm" } },
          "points": [ { "id": "S", "kind": "supply" }, { "id": "n", "kind": "nozzle", "orifice": { "diameter": "4 mm", "dischargeCoefficient": 0.8 } } ],
          "runs": [ { "id": "A", "from": "S", "to": "n", {{trunk}} } ]
        }
        """;

    /// <summary>A car with every case that its sport's usual rules ask for, and one nozzle behind too thin a tube.</summary>
    static string Racing(string agent, string bottle) => $$"""
        {
          "format": 1, "agent": "{{agent}}", "temperature": "20 °C", "application": "motorsport",
          "supply": { "bottle": { {{bottle}} } },
          "tubes": { "wide": { "bore": "10 mm" }, "mid": { "bore": "8 mm" }, "thin": { "bore": "4 mm" } },
          "points": [
            { "id": "S", "kind": "supply" }, { "id": "T1", "kind": "tee", "fedThrough": "run", "body": "smooth" }, { "id": "T2", "kind": "tee", "fedThrough": "branch", "body": "smooth" },
            { "id": "a", "kind": "nozzle", {{Holes}} }, { "id": "b", "kind": "nozzle", {{Holes}} }, { "id": "c", "kind": "nozzle", {{Holes}} }
          ],
          "runs": [
            { "id": "F", "from": "S", "to": "T1", "tube": "wide", "length": "2 m", "rise": "0.5 m" },
            { "id": "A", "from": "T1", "to": "a", "leaves": "branch", "tube": "mid", "length": "0.5 m" }, { "id": "M", "from": "T1", "to": "T2", "leaves": "run", "tube": "wide", "length": "1 m" },
            { "id": "B", "from": "T2", "to": "b", "tube": "mid", "length": "0.6 m" }, { "id": "C", "from": "T2", "to": "c", "tube": "thin", "length": "1.4 m" }
          ]
        }
        """;
}

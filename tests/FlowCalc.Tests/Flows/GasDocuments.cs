namespace FlowCalc.Tests.Flows;

/// <summary>Small documents of gases and liquefied gases.</summary>
internal static class GasDocuments
{
    /// <summary>A bottle that suits each agent, without its shell, so that heat comes from a wall that keeps its temperature.</summary>
    public static readonly (string Agent, string Bottle)[] All =
    [
        ("HFC-227ea", """ "volume": "8 L", "fill": "7 kg", "chargePressure": "25 bar" """),
        ("FK-5-1-12", """ "volume": "8 L", "fill": "8 kg", "chargePressure": "25 bar" """),
        ("HFC-125", """ "volume": "8 L", "fill": "6 kg", "chargePressure": "25 bar" """),
        ("HFC-236fa", """ "volume": "8 L", "fill": "7 kg", "chargePressure": "25 bar" """),
        ("HFC-23", """ "volume": "8 L", "fill": "5.6 kg" """),
        ("carbon-dioxide", """ "volume": "8 L", "fill": "5.4 kg" """),
        ("nitrogen", """ "volume": "8 L", "chargePressure": "200 bar" """),
        ("argon", """ "volume": "8 L", "chargePressure": "200 bar" """),
        ("IG-541", """ "volume": "8 L", "chargePressure": "150 bar" """),
        ("IG-55", """ "volume": "8 L", "chargePressure": "300 bar" """),
    ];

    /// <summary>The agents.</summary>
    public static TheoryData<string> Agents => [.. All.Select(row => row.Agent)];

    /// <summary>Agents that boil.</summary>
    public static TheoryData<string> Boiling => [.. All.Take(6).Select(row => row.Agent)];

    /// <summary>A layout with three nozzles behind two tees, the last of them behind the thinnest tube.</summary>
    /// <param name="agent">The agent.</param>
    /// <param name="more">More members of the document, each with a comma behind it.</param>
    /// <param name="bottle">More members of the bottle, each with a comma before it.</param>
    public static string Tree(string agent, string more = "", string bottle = "") => $$"""
        { "format": 1, "agent": "{{agent}}", "temperature": "20 °C", {{more}}
          "supply": { "bottle": { {{All.Single(row => row.Agent == agent).Bottle}}{{bottle}} } },
          "points": [ { "id": "S", "kind": "supply" }, { "id": "T1", "kind": "tee", "fedThrough": "run", "body": "smooth" }, { "id": "T2", "kind": "tee", "fedThrough": "branch", "body": "smooth" },
            { "id": "A", "kind": "nozzle", "orifice": { "diameter": "2.5 mm", "dischargeCoefficient": 0.8, "count": 2 } },
            { "id": "B", "kind": "nozzle", "orifice": { "diameter": "2.5 mm", "dischargeCoefficient": 0.8, "count": 2 } },
            { "id": "C", "kind": "nozzle", "orifice": { "diameter": "2.5 mm", "dischargeCoefficient": 0.8, "count": 2 } } ],
          "runs": [ { "from": "S", "to": "T1", "bore": "12 mm", "length": "2 m", "rise": "0.5 m", "bends": [{ "angle": "90 °", "radius": "40 mm" }] },
            { "from": "T1", "to": "A", "leaves": "branch", "bore": "8 mm", "length": "0.5 m" },
            { "from": "T1", "to": "T2", "leaves": "run", "bore": "10 mm", "length": "1 m" },
            { "from": "T2", "to": "B", "bore": "8 mm", "length": "0.6 m" },
            { "from": "T2", "to": "C", "bore": "6 mm", "length": "1.4 m", "lossCoefficient": 1.5 } ] }
        """;

    /// <summary>A layout of one nozzle right at a wide, short tube.</summary>
    /// <param name="agent">The agent, quoted or an object.</param>
    /// <param name="supply">The supply.</param>
    /// <param name="more">More members of the document, each with a comma behind it.</param>
    /// <param name="nozzle">The nozzle's own members.</param>
    public static string Nozzle(string agent, string supply, string more = "", string nozzle = """ "orifice": { "diameter": "4 mm", "dischargeCoefficient": 0.8 } """) => $$"""
        { "format": 1, "agent": {{agent}}, "temperature": "20 °C", {{more}} "supply": {{supply}},
          "points": [ { "id": "S", "kind": "supply" }, { "id": "N", "kind": "nozzle", {{nozzle}} } ],
          "runs": [ { "id": "R", "from": "S", "to": "N", "bore": "50 mm", "length": "0.01 m" } ] }
        """;
}

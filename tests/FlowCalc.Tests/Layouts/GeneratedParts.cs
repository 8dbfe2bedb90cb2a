namespace FlowCalc.Tests.Layouts;

/// <summary>Parts of generated documents.</summary>
static class GeneratedParts
{
    /// <summary>A quantity as text, or as a value and a unit in either order.</summary>
    public static string Quantity(Tape tape, double low, double high, string unit)
    {
        var number = tape.Number(low, high);
        return tape.Below(4) switch
        {
            0 => $$"""{ "value": {{number}}, "unit": "{{unit}}" }""",
            1 => $$"""{ "unit": "{{unit}}", "value": {{number}} }""",
            2 => $"\"{number}{unit}\"",
            _ => $"\"{number} {unit}\"",
        };
    }

    public static string Agent(Tape tape) => tape.Below(4) switch
    {
        0 => """{ "mixture": "water-propylene-glycol", "massFraction": 0.3 }""",
        1 => """{ "density": "1.05 kg/L", "viscosity": "3 cP" }""",
        2 => "\"water-premix\"",
        _ => "\"water\"",
    };

    public static string Supply(Tape tape)
    {
        if (tape.Once(2)) return $$"""{ "pressure": {{Quantity(tape, 8, 16, "bar")}} }""";
        var outlet = tape.Once(3) ? "" : $$""", "outlet": { "dipTube": { "bore": "10 mm", "length": "300 mm" }, "valveKv": {{Quantity(tape, 1.5, 3, "m3/h")}} }""";
        return $$"""{ "bottle": { "volume": "4.2 L", "fill": {{tape.Of("\"3 kg\"", "\"2.9 L\"", "\"0.7 kg/L\"")}}, "chargePressure": {{Quantity(tape, 10, 16, "bar")}}, "chargeTemperature": "20 °C"{{outlet}} } }""";
    }

    public static string Nozzle(Tape tape) => tape.Below(4) switch
    {
        0 => "\"nozzle\": \"cone\"",
        1 => "\"nozzle\": \"fan\", \"aim\": [0, 0, -1]",
        2 => $"\"kFactor\": {Quantity(tape, 0.5, 2.5, "L/min/bar^0.5")}",
        _ => $$"""
            "orifice": { "diameter": {{Quantity(tape, 0.8, 2, "mm")}}, "dischargeCoefficient": 0.8, "count": 2 }, "pressureRange": ["2 bar", "18 bar"]
            """,
    };

    public static string Fittings(Tape tape) => tape.Below(6) switch
    {
        0 => ", \"fittings\": [\"panel\"]",
        1 => ", \"fittings\": [{ \"fitting\": \"valve\", \"at\": \"0.2 m\" }, \"elbow-90-mitred\"]",
        2 => ", \"fittings\": [{ \"kind\": \"strainer\", \"lossCoefficient\": 2.5 }, { \"fitting\": { \"kind\": \"elbow\", \"angle\": \"45 °\" }, \"count\": 2 }]",
        _ => "",
    };
}

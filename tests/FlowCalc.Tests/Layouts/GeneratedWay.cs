namespace FlowCalc.Tests.Layouts;

/// <summary>Generated runs.</summary>
static class GeneratedWay
{
    /// <summary>The next place: half a metre to two metres off along every axis, so that right-angled ways have room for their bends.</summary>
    public static Spot Next(Tape tape, Spot from) => new(from.X + Step(tape), from.Y + Step(tape), from.Z + Step(tape));

    /// <summary>A run between two points.</summary>
    public static string Run(Tape tape, string from, string to, string? port, bool isPlaced, Spot start, Spot end)
    {
        var id = tape.Once(3) ? $"\"id\": \"run {to}\", " : "";
        var leaves = port is null ? "" : $"\"leaves\": \"{port}\", ";
        var loss = tape.Once(6) ? ", \"lossCoefficient\": 0.7" : "";
        return $$"""{ {{id}}"from": "{{from}}", "to": "{{to}}", {{leaves}}{{Tube(tape)}}, {{(isPlaced ? Placed(tape, start, end) : Measured(tape))}}{{GeneratedParts.Fittings(tape)}}{{loss}} }""";
    }

    static double Step(Tape tape) => (tape.Once(2) ? 1 : -1) * (0.5 + 0.25 * tape.Below(7));

    static string Tube(Tape tape) => tape.Below(4) switch
    {
        0 => "\"tube\": \"wide\"",
        1 => "\"tube\": \"thin\"",
        2 => "\"tube\": \"CU-8x1\"",
        _ => $"\"bore\": {GeneratedParts.Quantity(tape, 2, 12, "mm")}, \"roughness\": \"1.5 µm\"",
    };

    static string Placed(Tape tape, Spot start, Spot end) => tape.Below(3) switch
    {
        0 => "\"bendRadius\": \"40 mm\", \"via\": []",
        1 => $"\"bendRadius\": \"40 mm\", \"via\": [{new Spot(end.X, start.Y, start.Z)}, {new Spot(end.X, end.Y, start.Z)}]",
        _ => $"\"bendRadius\": \"1 1/2 in\", \"via\": [{new Spot(end.X, end.Y, start.Z)}]",
    };

    static string Measured(Tape tape)
    {
        var rise = tape.Once(2) ? $", \"rise\": {GeneratedParts.Quantity(tape, -0.4, 0.4, "m")}" : "";
        var bends = tape.Below(3) switch
        {
            0 => ", \"bends\": [{ \"angle\": \"90 °\", \"radius\": \"40 mm\", \"count\": 2 }]",
            1 => ", \"bends\": [{ \"angle\": \"45 °\", \"radius\": \"30 mm\" }, { \"angle\": { \"value\": 1.2, \"unit\": \"rad\" }, \"radius\": \"1 1/2 in\" }]",
            _ => "",
        };
        return $"\"length\": {GeneratedParts.Quantity(tape, 0.4, 3, "m")}{rise}{bends}";
    }
}

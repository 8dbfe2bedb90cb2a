using FlowCalc.Circuits;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Tests.Layouts;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Tests.Circuits;

/// <summary>Small circuits for the tests: a key, a test lamp and a push in a loop with one actuator.</summary>
static class CircuitDocument
{
    /// <summary>The source of the loop.</summary>
    public const string Battery = """{ "kind": "battery", "minus": "m", "plus": "p", "voltage": "9 V", "internalResistance": "1.7 ohm" }""";

    /// <summary>A loop: source, key, push (or lamp in test), wire out, actuator, wire back.</summary>
    public const string Loop = """
        {
          "source": { "kind": "battery", "minus": "m", "plus": "p", "voltage": "9 V", "internalResistance": "1.7 ohm" },
          "parts": {
            "key": { "kind": "switch", "between": ["p", "a"], "closedIn": ["armed"], "resistance": "50 mohm" },
            "try": { "kind": "switch", "between": ["p", "b"], "closedIn": ["test"], "resistance": "50 mohm" },
            "lamp": { "kind": "lamp", "between": ["b", "t"], "resistance": "1 kohm", "forwardVoltage": "1.8 V", "tolerance": 0.05, "lightsAt": "2 mA" },
            "fire": { "kind": "push", "between": ["a", "t"], "purpose": "fire", "resistance": "50 mohm" },
            "out": { "kind": "wire", "between": ["t", "x"], "length": "4 m", "crossSection": "0.75 mm2", "cable": "flexible", "temperature": "85 °C" },
            "squib": { "kind": "actuator", "between": ["x", "y"], "type": "pyrotechnic", "resistance": "2 ohm", "allFire": "1.5 A", "noFire": "0.3 A", "pulse": "10 ms" },
            "back": { "kind": "wire", "between": ["y", "m"], "length": "4 m", "crossSection": "0.75 mm2", "cable": "flexible", "temperature": "85 °C" }
          }
        }
        """;

    /// <summary>A document with a circuit, changed at places within it, or from two strokes on within the document.</summary>
    public static string Json(string circuit, params (string Pointer, string? Value)[] edits) =>
        Specimen.With([("/circuit", circuit), .. edits.Select(edit => (edit.Pointer.StartsWith("//", StringComparison.Ordinal) ? edit.Pointer[1..] : "/circuit" + edit.Pointer, edit.Value))]);

    /// <summary>The same, read.</summary>
    public static Layout Read(string circuit, params (string Pointer, string? Value)[] edits)
    {
        var reading = Specimen.Read(Json(circuit, edits));
        Assert.Empty(reading.Faults);
        return reading.Layout!;
    }

    /// <summary>The same, worked out.</summary>
    public static CircuitResult Solve(string circuit, params (string Pointer, string? Value)[] edits) =>
        CircuitAnalysis.Of(Read(circuit, edits).Circuit!, TestContext.Current.CancellationToken);

    /// <summary>The same, judged.</summary>
    public static CircuitJudgement Judge(string circuit, params (string Pointer, string? Value)[] edits)
    {
        var layout = Read(circuit, edits);
        return CircuitFindings.Judge(layout, CircuitAnalysis.Of(layout.Circuit!, TestContext.Current.CancellationToken), UnitSystem.Metric, TestContext.Current.CancellationToken);
    }
}

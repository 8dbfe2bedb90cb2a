using System.Globalization;
using FlowCalc.Circuits;
using FlowCalc.Layouts.Editing;
using FlowCalc.Quantities;
using UnitsNet;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Findings.Circuits;

/// <summary>Changes of a circuit: thicker wires, more resistance before a lamp.</summary>
static class CircuitChanges
{
    // The E12 row of preferred numbers (IEC 60063, from memory), as parts of a decade.
    static readonly double[] Preferred = [1, 1.2, 1.5, 1.8, 2.2, 2.7, 3.3, 3.9, 4.7, 5.6, 6.8, 8.2];

    /// <summary>Ladders of wire: one thicker by one size, two sizes and so on; and all wires of a size alike.</summary>
    public static IEnumerable<IEnumerable<CircuitChange>> Wires(Circuit circuit)
    {
        var wires = circuit.Of<Wire>().Where(one => one.Part.Make is not null).ToArray();
        foreach (var one in wires) yield return Ladder(circuit, [one]);
        foreach (var alike in wires.GroupBy(one => (one.Part.Make!.Area, one.Part.Make.Gauge, one.Part.Make.Cable)))
            if (alike.Count() > 1) yield return Ladder(circuit, [.. alike]);
        if (wires.Length > 1) yield return Ladder(circuit, wires);
    }

    /// <summary>The ladder of a lamp with more and more resistance before it.</summary>
    public static IEnumerable<CircuitChange> Lamp(Circuit circuit, int index)
    {
        var lamp = (Lamp)circuit.Parts[index];
        foreach (var ohms in Larger(lamp.Resistance.Ohms).Take(24))
        {
            var text = QuantityWriter.Text(ohms, QuantityKind.Resistance, UnitSystem.Si, 3);
            yield return new(
                circuit with { Parts = circuit.Parts.SetItem(index, lamp with { Resistance = ElectricResistance.FromOhms(ohms) }) },
                [new(Path(lamp, "resistance"), QuantityWriter.Text(lamp.Resistance.Ohms, QuantityKind.Resistance, UnitSystem.Si, 6), text)],
                $"{text} before {Wording.Id(lamp.Name)}", ohms / lamp.Resistance.Ohms - 1);
        }
    }

    static IEnumerable<double> Larger(double ohms)
    {
        for (var decade = Math.Floor(Math.Log10(ohms)); decade < 6; decade++)
            foreach (var part in Preferred)
                if (Round(part, decade) is var next && next > ohms * (1 + 1e-9)) yield return next;
    }

    static double Round(double part, double decade) => double.Parse(string.Create(CultureInfo.InvariantCulture, $"{part}e{decade}"), CultureInfo.InvariantCulture);

    static IEnumerable<CircuitChange> Ladder(Circuit circuit, (int Index, Wire Part)[] wires)
    {
        var makes = wires.Select(one => one.Part.Make).ToArray();
        while (true)
        {
            makes = [.. makes.Select(make => make?.Larger)];
            if (Array.Exists(makes, make => make is null)) yield break;
            var (parts, changes, copper) = (circuit.Parts, new List<CureChange>(), 0.0);
            for (var at = 0; at < wires.Length; at++)
            {
                var (index, wire) = wires[at];
                var (from, to) = (wire.Make!, makes[at]!);
                parts = parts.SetItem(index, wire with { Make = to, Resistance = to.Resistance });
                copper += to.Length.Meters * (to.CopperArea - from.CopperArea);
                changes.Add(to.Gauge is { } gauge
                    ? new(Path(wire, "awg"), ChangeValue.FromNumber(from.Gauge!.Value), ChangeValue.FromNumber(gauge))
                    : new(Path(wire, "crossSection"), SizeOf(from), SizeOf(to)));
            }
            yield return new(circuit with { Parts = parts }, [.. changes], $"{SizeOf(makes[0]!)} instead of {SizeOf(wires[0].Part.Make!)} in {Wording.Ids([.. wires.Select(one => one.Part.Name)])}", copper);
        }
    }

    static string SizeOf(WireMake make) => make.Gauge is { } gauge
        ? string.Create(CultureInfo.InvariantCulture, $"AWG {gauge}")
        : string.Create(CultureInfo.InvariantCulture, $"{Math.Round(make.Area!.Value.SquareMillimeters, 9)} mm2");

    static string Path(CircuitPart part, string member) => EditPath.Of("circuit", "parts", part.Name, member);
}

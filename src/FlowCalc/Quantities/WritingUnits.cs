namespace FlowCalc.Quantities;

/// <summary>Which unit an answer is written in, by kind and system.</summary>
static class WritingUnits
{
    static readonly UnitEntry[][] Entries =
        [.. Enum.GetValues<UnitSystem>().Select(system => Enum.GetValues<QuantityKind>().Select(kind => Row(kind, Symbol(kind, system))).ToArray())];

    // Where a size is everyday in a smaller unit, a message takes that one. Limits in SI, below which each unit serves; the smallest first.
    static readonly (QuantityKind Kind, UnitSystem System, double Below, UnitEntry Entry)[] Smaller =
    [
        (QuantityKind.Length, UnitSystem.Metric, 1e-4, Row(QuantityKind.Length, "µm")),
        (QuantityKind.Length, UnitSystem.Metric, 0.2, Row(QuantityKind.Length, "mm")),
        (QuantityKind.Length, UnitSystem.Us, 0.3048, Row(QuantityKind.Length, "in")),
        (QuantityKind.Area, UnitSystem.Metric, 0.01, Row(QuantityKind.Area, "mm2")),
        (QuantityKind.Area, UnitSystem.Us, 0.09290304, Row(QuantityKind.Area, "in2")),
        (QuantityKind.Volume, UnitSystem.Metric, 1e-4, Row(QuantityKind.Volume, "mL")),
        (QuantityKind.Volume, UnitSystem.Us, 3.785411784e-4, Row(QuantityKind.Volume, "in3")),
        (QuantityKind.Mass, UnitSystem.Metric, 0.1, Row(QuantityKind.Mass, "g")),
        (QuantityKind.Current, UnitSystem.Metric, 0.1, Row(QuantityKind.Current, "mA")),
        (QuantityKind.Current, UnitSystem.Us, 0.1, Row(QuantityKind.Current, "mA")),
        (QuantityKind.Resistance, UnitSystem.Metric, 0.1, Row(QuantityKind.Resistance, "mohm")),
        (QuantityKind.Resistance, UnitSystem.Us, 0.1, Row(QuantityKind.Resistance, "mohm")),
    ];

    /// <summary>The unit of values in answers.</summary>
    public static UnitEntry Of(QuantityKind kind, UnitSystem system)
    {
        if ((uint)system >= (uint)Entries.Length) throw new ArgumentOutOfRangeException(nameof(system), system, "Not a system of units.");
        if ((uint)kind >= (uint)Entries[0].Length) throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of quantity.");
        return Entries[(int)system][(int)kind];
    }

    /// <summary>The unit of a value in a message: a smaller one where that reads better.</summary>
    public static UnitEntry OfText(double si, QuantityKind kind, UnitSystem system)
    {
        var usual = Of(kind, system);
        if (si == 0) return usual;
        foreach (var smaller in Smaller)
            if (smaller.Kind == kind && smaller.System == system && Math.Abs(si) < smaller.Below) return smaller.Entry;
        return usual;
    }

    static UnitEntry Row(QuantityKind kind, string symbol) => UnitTable.Of(kind).Single(entry => entry.Symbol == symbol);

    static string Symbol(QuantityKind kind, UnitSystem system)
    {
        var (metric, us, si) = kind switch
        {
            QuantityKind.Length => ("m", "ft", "m"),
            QuantityKind.Area => ("m2", "ft2", "m2"),
            QuantityKind.Volume => ("L", "US gal", "m3"),
            QuantityKind.Pressure => ("bar", "psi", "Pa"),
            QuantityKind.Mass => ("kg", "lb", "kg"),
            QuantityKind.Density => ("kg/m3", "lb/ft3", "kg/m3"),
            QuantityKind.VolumeFlow => ("L/min", "US gal/min", "m3/s"),
            QuantityKind.MassFlow => ("kg/s", "lb/s", "kg/s"),
            QuantityKind.KFactor => ("L/min/bar^0.5", "US gal/min/psi^0.5", "m3/s/Pa^0.5"),
            QuantityKind.FlowCoefficient => ("m3/h", "Cv", "m3/s/Pa^0.5"),
            QuantityKind.Viscosity => ("mPa·s", "cP", "Pa·s"),
            QuantityKind.Temperature => ("°C", "°F", "K"),
            QuantityKind.Time => ("s", "s", "s"),
            QuantityKind.Angle => ("°", "°", "rad"),
            QuantityKind.Force => ("N", "lbf", "N"),
            QuantityKind.Current => ("A", "A", "A"),
            QuantityKind.Voltage => ("V", "V", "V"),
            QuantityKind.Resistance => ("ohm", "ohm", "ohm"),
            QuantityKind.Speed => ("m/s", "ft/s", "m/s"),
            QuantityKind.Acceleration => ("m/s2", "ft/s2", "m/s2"),
            QuantityKind.Stress => ("MPa", "psi", "Pa"),
            QuantityKind.Capacitance => ("F", "F", "F"),
            QuantityKind.Energy => ("J", "J", "J"),
            QuantityKind.WettingRate => ("L/min/m2", "US gal/min/ft2", "m3/s/m2"),
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of quantity."),
        };
        return system switch { UnitSystem.Metric => metric, UnitSystem.Us => us, _ => si };
    }
}

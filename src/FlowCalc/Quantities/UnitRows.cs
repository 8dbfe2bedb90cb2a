using System.Collections.Immutable;
using UnitsNet.Units;
using U = UnitsNet;

namespace FlowCalc.Quantities;

/// <summary>The rows of the closed table. Spellings are ours, factors are UnitsNet's, taken once when the table is built.</summary>
static class UnitRows
{
    public static ImmutableArray<UnitEntry> Build() => [.. Geometry(), .. Pressures(), .. Matter(), .. Flows(), .. Coefficients(), .. Rest()];

    static IEnumerable<UnitEntry> Geometry()
    {
        yield return Row(QuantityKind.Length, Metres(LengthUnit.Meter), "m");
        yield return Row(QuantityKind.Length, Metres(LengthUnit.Centimeter), "cm");
        yield return Row(QuantityKind.Length, Metres(LengthUnit.Millimeter), "mm");
        // Keyboards and standards disagree on the micro sign: U+00B5 and U+03BC look alike.
        yield return Row(QuantityKind.Length, Metres(LengthUnit.Micrometer), "\u00B5m", "\u03BCm", "um");
        yield return Row(QuantityKind.Length, Metres(LengthUnit.Inch), "in");
        yield return Row(QuantityKind.Length, Metres(LengthUnit.Foot), "ft");

        yield return Row(QuantityKind.Area, SquareMetres(AreaUnit.SquareMeter), "m2");
        yield return Row(QuantityKind.Area, SquareMetres(AreaUnit.SquareCentimeter), "cm2");
        yield return Row(QuantityKind.Area, SquareMetres(AreaUnit.SquareMillimeter), "mm2");
        yield return Row(QuantityKind.Area, SquareMetres(AreaUnit.SquareInch), "in2");
        yield return Row(QuantityKind.Area, SquareMetres(AreaUnit.SquareFoot), "ft2");

        yield return Row(QuantityKind.Volume, CubicMetres(VolumeUnit.CubicMeter), "m3");
        yield return Row(QuantityKind.Volume, CubicMetres(VolumeUnit.Liter), "L", "l");
        yield return Row(QuantityKind.Volume, CubicMetres(VolumeUnit.Milliliter), "mL", "ml");
        yield return Row(QuantityKind.Volume, CubicMetres(VolumeUnit.CubicInch), "in3");
        yield return Row(QuantityKind.Volume, CubicMetres(VolumeUnit.CubicFoot), "ft3");
        yield return Row(QuantityKind.Volume, CubicMetres(VolumeUnit.UsGallon), "US gal");

        yield return Row(QuantityKind.Angle, new U.Angle(1, AngleUnit.Degree).Radians, "°", "deg");
        yield return Row(QuantityKind.Angle, new U.Angle(1, AngleUnit.Radian).Radians, "rad");
    }

    static IEnumerable<UnitEntry> Pressures()
    {
        (string Symbol, string Absolute, string AbsoluteTwin, PressureUnit Unit)[] units =
        [
            ("bar", "bara", "bar(a)", PressureUnit.Bar),
            ("mbar", "mbar(a)", "mbara", PressureUnit.Millibar),
            ("Pa", "Pa(a)", "Paa", PressureUnit.Pascal),
            ("kPa", "kPa(a)", "kPaa", PressureUnit.Kilopascal),
            ("MPa", "MPa(a)", "MPaa", PressureUnit.Megapascal),
            ("psi", "psia", "psi(a)", PressureUnit.PoundForcePerSquareInch),
        ];
        foreach (var (symbol, _, _, unit) in units)
            yield return Row(QuantityKind.Pressure, Pascals(unit), symbol, symbol + "g", symbol + "(g)") with { IsAbsolute = false };
        foreach (var (_, symbol, twin, unit) in units)
            yield return Row(QuantityKind.Pressure, Pascals(unit), symbol, twin) with { IsAbsolute = true };
    }

    static IEnumerable<UnitEntry> Matter()
    {
        // UnitsNet's own pound per cubic foot is rounded, 6.8e-9 too low; its pound and its foot are exact.
        var poundPerCubicFoot = new U.Mass(1, MassUnit.Pound).Kilograms / CubicMetres(VolumeUnit.CubicFoot);

        yield return Row(QuantityKind.Mass, new U.Mass(1, MassUnit.Kilogram).Kilograms, "kg");
        yield return Row(QuantityKind.Mass, new U.Mass(1, MassUnit.Gram).Kilograms, "g");
        yield return Row(QuantityKind.Mass, new U.Mass(1, MassUnit.Pound).Kilograms, "lb");

        yield return Row(QuantityKind.Density, KilogramsPerCubicMetre(DensityUnit.KilogramPerCubicMeter), "kg/m3");
        yield return Row(QuantityKind.Density, KilogramsPerCubicMetre(DensityUnit.KilogramPerLiter), "kg/L", "kg/l");
        yield return Row(QuantityKind.Density, KilogramsPerCubicMetre(DensityUnit.GramPerCubicCentimeter), "g/cm3");
        yield return Row(QuantityKind.Density, poundPerCubicFoot, "lb/ft3");

        yield return Row(QuantityKind.Viscosity, PascalSeconds(DynamicViscosityUnit.PascalSecond), "Pa·s", "Pa.s", "Pa\u22C5s");
        yield return Row(QuantityKind.Viscosity, PascalSeconds(DynamicViscosityUnit.MillipascalSecond), "mPa·s", "mPa.s", "mPa\u22C5s");
        yield return Row(QuantityKind.Viscosity, PascalSeconds(DynamicViscosityUnit.Centipoise), "cP");

        yield return Temperature(TemperatureUnit.DegreeCelsius, "°C", "degC", "\u2103");
        yield return Temperature(TemperatureUnit.DegreeFahrenheit, "°F", "degF", "\u2109");
        yield return Temperature(TemperatureUnit.Kelvin, "K");
    }

    static IEnumerable<UnitEntry> Flows()
    {
        yield return Row(QuantityKind.VolumeFlow, CubicMetresPerSecond(VolumeFlowUnit.CubicMeterPerSecond), "m3/s");
        yield return Row(QuantityKind.VolumeFlow, CubicMetresPerSecond(VolumeFlowUnit.CubicMeterPerHour), "m3/h");
        yield return Row(QuantityKind.VolumeFlow, CubicMetresPerSecond(VolumeFlowUnit.LiterPerSecond), "L/s", "l/s");
        yield return Row(QuantityKind.VolumeFlow, CubicMetresPerSecond(VolumeFlowUnit.LiterPerMinute), "L/min", "l/min");
        yield return Row(QuantityKind.VolumeFlow, CubicMetresPerSecond(VolumeFlowUnit.MilliliterPerSecond), "mL/s", "ml/s");
        yield return Row(QuantityKind.VolumeFlow, UsGallonPerMinute(), "US gal/min", "US gpm");

        yield return Row(QuantityKind.MassFlow, KilogramsPerSecond(MassFlowUnit.KilogramPerSecond), "kg/s");
        yield return Row(QuantityKind.MassFlow, KilogramsPerSecond(MassFlowUnit.KilogramPerMinute), "kg/min");
        yield return Row(QuantityKind.MassFlow, KilogramsPerSecond(MassFlowUnit.GramPerSecond), "g/s");
        yield return Row(QuantityKind.MassFlow, KilogramsPerSecond(MassFlowUnit.PoundPerSecond), "lb/s");
        // UnitsNet's own pound per minute is rounded, 2.7e-6 too high; its pound is exact.
        yield return Row(QuantityKind.MassFlow, new U.Mass(1, MassUnit.Pound).Kilograms / 60.0, "lb/min");

        yield return Row(QuantityKind.WettingRate, 1.0, "m3/s/m2");
        yield return Row(QuantityKind.WettingRate, CubicMetresPerSecond(VolumeFlowUnit.LiterPerMinute), "L/min/m2", "l/min/m2");
        yield return Row(QuantityKind.WettingRate, UsGallonPerMinute() / SquareMetres(AreaUnit.SquareFoot), "US gal/min/ft2", "US gpm/ft2");

        yield return Row(QuantityKind.Speed, MetresPerSecond(SpeedUnit.MeterPerSecond), "m/s");
        yield return Row(QuantityKind.Speed, MetresPerSecond(SpeedUnit.KilometerPerHour), "km/h");
        yield return Row(QuantityKind.Speed, MetresPerSecond(SpeedUnit.FootPerSecond), "ft/s");
        yield return Row(QuantityKind.Speed, MetresPerSecond(SpeedUnit.MilePerHour), "mph", "mi/h");
    }

    static IEnumerable<UnitEntry> Coefficients()
    {
        // Flow over the root of pressure, for 1000 kg/m³: 1 L/min through K 1 at 1 bar, 1 m³/h through Kv 1 at 1 bar,
        // 1 US gal/min through Cv 1 at 1 psi. Cv is tied to water at 60 °F, 0.1 % lighter, which moves it by 0.05 %;
        // IEC 60534-1 leaves that out too (Kv = 0.865 Cv; from memory).
        var metricK = CubicMetresPerSecond(VolumeFlowUnit.LiterPerMinute) / Math.Sqrt(Pascals(PressureUnit.Bar));
        var usK = UsGallonPerMinute() / Math.Sqrt(Pascals(PressureUnit.PoundForcePerSquareInch));
        var kv = CubicMetresPerSecond(VolumeFlowUnit.CubicMeterPerHour) / Math.Sqrt(Pascals(PressureUnit.Bar));

        yield return Row(QuantityKind.KFactor, metricK, "L/min/bar^0.5", "L/min/√bar", "l/min/bar^0.5", "l/min/√bar");
        yield return Row(QuantityKind.KFactor, usK, "US gal/min/psi^0.5", "US gal/min/√psi", "US gpm/psi^0.5", "US gpm/√psi");
        yield return Row(QuantityKind.KFactor, 1.0, "m3/s/Pa^0.5", "m3/s/√Pa");

        yield return Row(QuantityKind.FlowCoefficient, kv, "m3/h", "Kv");
        yield return Row(QuantityKind.FlowCoefficient, usK, "Cv");
        yield return Row(QuantityKind.FlowCoefficient, 1.0, "m3/s/Pa^0.5", "m3/s/√Pa");
    }

    static IEnumerable<UnitEntry> Rest()
    {
        yield return Row(QuantityKind.Time, Seconds(DurationUnit.Second), "s");
        yield return Row(QuantityKind.Time, Seconds(DurationUnit.Millisecond), "ms");
        yield return Row(QuantityKind.Time, Seconds(DurationUnit.Minute), "min");
        yield return Row(QuantityKind.Time, Seconds(DurationUnit.Hour), "h");

        yield return Row(QuantityKind.Force, Newtons(ForceUnit.Newton), "N");
        yield return Row(QuantityKind.Force, Newtons(ForceUnit.Kilonewton), "kN");
        yield return Row(QuantityKind.Force, Newtons(ForceUnit.PoundForce), "lbf");

        yield return Row(QuantityKind.Current, new U.ElectricCurrent(1, ElectricCurrentUnit.Ampere).Amperes, "A");
        yield return Row(QuantityKind.Current, new U.ElectricCurrent(1, ElectricCurrentUnit.Milliampere).Amperes, "mA");
        yield return Row(QuantityKind.Voltage, new U.ElectricPotential(1, ElectricPotentialUnit.Volt).Volts, "V");
        yield return Row(QuantityKind.Voltage, new U.ElectricPotential(1, ElectricPotentialUnit.Millivolt).Volts, "mV");

        // The capital omega and the ohm sign (U+2126) look alike, as the two micro signs do.
        yield return Row(QuantityKind.Resistance, new U.ElectricResistance(1, ElectricResistanceUnit.Ohm).Ohms, "ohm", "\u03A9", "\u2126");
        yield return Row(QuantityKind.Resistance, new U.ElectricResistance(1, ElectricResistanceUnit.Milliohm).Ohms, "mohm", "m\u03A9", "m\u2126");
        yield return Row(QuantityKind.Resistance, new U.ElectricResistance(1, ElectricResistanceUnit.Kiloohm).Ohms, "kohm", "k\u03A9", "k\u2126");

        yield return Row(QuantityKind.Capacitance, Farads(ElectricCapacitanceUnit.Farad), "F");
        yield return Row(QuantityKind.Capacitance, Farads(ElectricCapacitanceUnit.Millifarad), "mF");
        yield return Row(QuantityKind.Capacitance, Farads(ElectricCapacitanceUnit.Microfarad), "\u00B5F", "\u03BCF", "uF");
        yield return Row(QuantityKind.Energy, new U.Energy(1, EnergyUnit.Joule).Joules, "J");
        yield return Row(QuantityKind.Energy, new U.Energy(1, EnergyUnit.Millijoule).Joules, "mJ");

        yield return Row(QuantityKind.Acceleration, MetresPerSquareSecond(AccelerationUnit.MeterPerSecondSquared), "m/s2");
        yield return Row(QuantityKind.Acceleration, MetresPerSquareSecond(AccelerationUnit.FootPerSecondSquared), "ft/s2");
        yield return Row(QuantityKind.Acceleration, MetresPerSquareSecond(AccelerationUnit.StandardGravity), "g", "gn");

        // Steel tables write N/mm², drawings MPa: the same.
        yield return Row(QuantityKind.Stress, Pascals(PressureUnit.Megapascal), "MPa", "N/mm2");
        yield return Row(QuantityKind.Stress, Pascals(PressureUnit.Gigapascal), "GPa", "kN/mm2");
        yield return Row(QuantityKind.Stress, Pascals(PressureUnit.Pascal), "Pa", "N/m2");
        yield return Row(QuantityKind.Stress, Pascals(PressureUnit.PoundForcePerSquareInch), "psi");
        yield return Row(QuantityKind.Stress, 1_000 * Pascals(PressureUnit.PoundForcePerSquareInch), "ksi");
    }

    static UnitEntry Temperature(TemperatureUnit unit, string symbol, params string[] twins)
    {
        var zero = new U.Temperature(0, unit).Kelvins;
        // Between 0 and 100 the difference keeps the factor's digits; from 0 to 1 it would lose two of them.
        var factor = (new U.Temperature(100, unit).Kelvins - zero) / 100.0;
        return Row(QuantityKind.Temperature, factor, symbol, twins) with { Offset = zero };
    }

    static UnitEntry Row(QuantityKind kind, double factor, string symbol, params string[] twins)
    {
        string[] spellings = [symbol, .. twins];
        var powers = spellings.SelectMany(s => new[] { s.Replace('2', '²').Replace('3', '³'), s.Replace("2", "^2", StringComparison.Ordinal).Replace("3", "^3", StringComparison.Ordinal) });
        return new UnitEntry(kind, symbol, [.. spellings.Concat(powers).Distinct().Skip(1)], factor, 0.0, null);
    }

    // UnitsNet's own US gallon per minute goes through a rounded divisor, 6e-15 off; its gallon is exact.
    static double UsGallonPerMinute() => CubicMetres(VolumeUnit.UsGallon) / 60.0;

    static double Metres(LengthUnit unit) => new U.Length(1, unit).Meters;
    static double SquareMetres(AreaUnit unit) => new U.Area(1, unit).SquareMeters;
    static double CubicMetres(VolumeUnit unit) => new U.Volume(1, unit).CubicMeters;
    static double Pascals(PressureUnit unit) => new U.Pressure(1, unit).Pascals;
    static double KilogramsPerCubicMetre(DensityUnit unit) => new U.Density(1, unit).KilogramsPerCubicMeter;
    static double PascalSeconds(DynamicViscosityUnit unit) => new U.DynamicViscosity(1, unit).PascalSeconds;
    static double CubicMetresPerSecond(VolumeFlowUnit unit) => new U.VolumeFlow(1, unit).CubicMetersPerSecond;
    static double KilogramsPerSecond(MassFlowUnit unit) => new U.MassFlow(1, unit).KilogramsPerSecond;
    static double MetresPerSecond(SpeedUnit unit) => new U.Speed(1, unit).MetersPerSecond;
    static double MetresPerSquareSecond(AccelerationUnit unit) => new U.Acceleration(1, unit).MetersPerSecondSquared;
    static double Seconds(DurationUnit unit) => new U.Duration(1, unit).Seconds;
    static double Farads(ElectricCapacitanceUnit unit) => new U.ElectricCapacitance(1, unit).Farads;
    static double Newtons(ForceUnit unit) => new U.Force(1, unit).Newtons;
}

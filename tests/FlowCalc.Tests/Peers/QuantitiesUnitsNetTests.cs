using System.Globalization;
using FlowCalc.Quantities;
using UnitsNet;

namespace FlowCalc.Tests.Peers;

/// <summary>
/// Each row against UnitsNet's own reading of the unit by its abbreviation there, and its own conversion of a few values: a row tied to the wrong unit shows here.
/// </summary>
public sealed class QuantitiesUnitsNetTests
{
    static readonly double[] Values = [0.001, 0.37, 1.0, 12.5, 98_765.4321];

    [Fact]
    public void Every_row_converts_as_UnitsNet_does()
    {
        foreach (var entry in UnitTable.All)
            foreach (var value in Values)
            {
                Assert.True(QuantityReader.TryRead(value, System.Text.Encoding.UTF8.GetBytes(entry.Symbol), entry.Kind, out var reading, out var fault), fault);

                // UnitsNet 5.75.1 holds two units in rounded form: the pound per cubic foot 6.8e-9 below the quotient of its own pound and foot,
                // and the pound per minute 2.7e-6 above a sixtieth of its pound a second. The definitions decide (Published).
                var tolerance = entry.Symbol switch { "lb/ft3" => 1e-8, "lb/min" => 3e-6, _ => 1e-14 };
                var peer = Peer(entry, value);
                Assert.True(Math.Abs(reading.Si - peer) <= tolerance * Math.Abs(peer), $"{entry.Kind} {value} {entry.Symbol}: {reading.Si:R}, UnitsNet {peer:R}");
            }
    }

    static double Peer(UnitEntry entry, double value) => entry.Kind switch
    {
        QuantityKind.Length => Length.From(value, Length.ParseUnit(Name(entry), Invariant)).Meters,
        QuantityKind.Area => Area.From(value, Area.ParseUnit(Name(entry), Invariant)).SquareMeters,
        QuantityKind.Volume => Volume.From(value, Volume.ParseUnit(Name(entry), Invariant)).CubicMeters,
        QuantityKind.Pressure => Pressure.From(value, Pressure.ParseUnit(Name(entry), Invariant)).Pascals,
        QuantityKind.Mass => Mass.From(value, Mass.ParseUnit(Name(entry), Invariant)).Kilograms,
        QuantityKind.Density => Density.From(value, Density.ParseUnit(Name(entry), Invariant)).KilogramsPerCubicMeter,
        QuantityKind.VolumeFlow => VolumeFlow.From(value, VolumeFlow.ParseUnit(Name(entry), Invariant)).CubicMetersPerSecond,
        QuantityKind.MassFlow => MassFlow.From(value, MassFlow.ParseUnit(Name(entry), Invariant)).KilogramsPerSecond,
        QuantityKind.KFactor or QuantityKind.FlowCoefficient => PerRootPressure(entry, value),
        QuantityKind.Viscosity => DynamicViscosity.From(value, DynamicViscosity.ParseUnit(Name(entry), Invariant)).PascalSeconds,
        QuantityKind.Temperature => Temperature.From(value, Temperature.ParseUnit(Name(entry), Invariant)).Kelvins,
        QuantityKind.Time => Duration.From(value, Duration.ParseUnit(Name(entry), Invariant)).Seconds,
        QuantityKind.Angle => Angle.From(value, Angle.ParseUnit(Name(entry), Invariant)).Radians,
        QuantityKind.Force => Force.From(value, Force.ParseUnit(Name(entry), Invariant)).Newtons,
        QuantityKind.Current => ElectricCurrent.From(value, ElectricCurrent.ParseUnit(Name(entry), Invariant)).Amperes,
        QuantityKind.Voltage => ElectricPotential.From(value, ElectricPotential.ParseUnit(Name(entry), Invariant)).Volts,
        QuantityKind.Resistance => ElectricResistance.From(value, ElectricResistance.ParseUnit(Name(entry), Invariant)).Ohms,
        QuantityKind.Speed => Speed.From(value, Speed.ParseUnit(Name(entry), Invariant)).MetersPerSecond,
        QuantityKind.Acceleration => Acceleration.From(value, Acceleration.ParseUnit(Name(entry), Invariant)).MetersPerSecondSquared,
        QuantityKind.Stress => Pressure.From(value, Pressure.ParseUnit(Name(entry), Invariant)).Pascals,
        QuantityKind.Capacitance => ElectricCapacitance.From(value, ElectricCapacitance.ParseUnit(Name(entry), Invariant)).Farads,
        QuantityKind.Energy => Energy.From(value, Energy.ParseUnit(Name(entry), Invariant)).Joules,
        QuantityKind.WettingRate => PerArea(entry, value),
        _ => throw new ArgumentOutOfRangeException(nameof(entry), entry.Kind, "A kind without a peer."),
    };

    // The flow that passes at four times the unit of pressure is twice the coefficient; the root comes from UnitsNet's pascals.
    static double PerRootPressure(UnitEntry entry, double value)
    {
        var (flow, pressure) = entry.Symbol switch
        {
            "L/min/bar^0.5" => (VolumeFlow.FromLitersPerMinute(2 * value), Pressure.FromBars(4)),
            "US gal/min/psi^0.5" or "Cv" => (VolumeFlow.FromUsGallonsPerMinute(2 * value), Pressure.FromPoundsForcePerSquareInch(4)),
            "m3/h" => (VolumeFlow.FromCubicMetersPerHour(2 * value), Pressure.FromBars(4)),
            _ => (VolumeFlow.FromCubicMetersPerSecond(2 * value), Pressure.FromPascals(4)),
        };
        return flow.CubicMetersPerSecond / Math.Sqrt(pressure.Pascals);
    }

    static double PerArea(UnitEntry entry, double value) => entry.Symbol switch
    {
        "L/min/m2" => VolumeFlow.FromLitersPerMinute(value).CubicMetersPerSecond,
        "US gal/min/ft2" => VolumeFlow.FromUsGallonsPerMinute(value).CubicMetersPerSecond / Area.FromSquareFeet(1).SquareMeters,
        _ => VolumeFlow.FromCubicMetersPerSecond(value).CubicMetersPerSecond,
    };

    // How UnitsNet abbreviates what is spelled otherwise here.
    static string Name(UnitEntry entry) => (entry.Kind, entry.Symbol) switch
    {
        (QuantityKind.Volume, "mL") => "ml",
        (QuantityKind.Area or QuantityKind.Volume or QuantityKind.Density or QuantityKind.VolumeFlow, var symbol) when !symbol.StartsWith("US", StringComparison.Ordinal) =>
            symbol.Replace('2', '²').Replace('3', '³'),
        (QuantityKind.Volume, _) => "gal (U.S.)",
        (QuantityKind.VolumeFlow, _) => "gal (U.S.)/min",
        (QuantityKind.Pressure, "bara") => "bar",
        (QuantityKind.Pressure, "psia") => "psi",
        (QuantityKind.Pressure, var symbol) => symbol.Replace("(a)", "", StringComparison.Ordinal),
        (QuantityKind.Resistance, "ohm") => "Ω",
        (QuantityKind.Resistance, "mohm") => "mΩ",
        (QuantityKind.Resistance, "kohm") => "kΩ",
        (QuantityKind.Acceleration, "g") => "g",
        (QuantityKind.Acceleration, var symbol) => symbol.Replace('2', '²'),
        (_, var symbol) => symbol,
    };

    static CultureInfo Invariant => CultureInfo.InvariantCulture;
}

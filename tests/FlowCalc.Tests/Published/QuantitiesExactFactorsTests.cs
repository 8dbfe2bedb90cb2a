using System.Globalization;
using FlowCalc.Quantities;

namespace FlowCalc.Tests.Published;

/// <summary>
/// Factors from their definitions: A. Thompson, B. N. Taylor, NIST Special Publication 811, 2008 edition, appendix B (from memory);
/// exact there are the inch 25.4 mm, the US gallon 231 in³, the pound 0.453 592 37 kg, the pound-force 4.448 221 615 260 5 N,
/// standard gravity 9.806 65 m/s² and the degree Fahrenheit 5/9 K. Derived ones are worked out below in decimal arithmetic.
/// </summary>
public sealed class QuantitiesExactFactorsTests
{
    const decimal Inch = 0.0254m;
    const decimal Foot = 0.3048m;
    const decimal Pound = 0.45359237m;
    const decimal PoundForce = 4.4482216152605m;
    const decimal UsGallon = 231m * Inch * Inch * Inch;

    static readonly Dictionary<(QuantityKind, string), decimal> Exact = new()
    {
        [(QuantityKind.Length, "m")] = 1m,
        [(QuantityKind.Length, "cm")] = 0.01m,
        [(QuantityKind.Length, "mm")] = 0.001m,
        [(QuantityKind.Length, "µm")] = 0.000001m,
        [(QuantityKind.Length, "in")] = Inch,
        [(QuantityKind.Length, "ft")] = Foot,
        [(QuantityKind.Area, "m2")] = 1m,
        [(QuantityKind.Area, "cm2")] = 0.0001m,
        [(QuantityKind.Area, "mm2")] = 0.000001m,
        [(QuantityKind.Area, "in2")] = Inch * Inch,
        [(QuantityKind.Area, "ft2")] = Foot * Foot,
        [(QuantityKind.Volume, "m3")] = 1m,
        [(QuantityKind.Volume, "L")] = 0.001m,
        [(QuantityKind.Volume, "mL")] = 0.000001m,
        [(QuantityKind.Volume, "in3")] = Inch * Inch * Inch,
        [(QuantityKind.Volume, "ft3")] = Foot * Foot * Foot,
        [(QuantityKind.Volume, "US gal")] = UsGallon,
        [(QuantityKind.Pressure, "bar")] = 100_000m,
        [(QuantityKind.Pressure, "mbar")] = 100m,
        [(QuantityKind.Pressure, "Pa")] = 1m,
        [(QuantityKind.Pressure, "kPa")] = 1_000m,
        [(QuantityKind.Pressure, "MPa")] = 1_000_000m,
        [(QuantityKind.Pressure, "psi")] = PoundForce / (Inch * Inch),
        [(QuantityKind.Pressure, "bara")] = 100_000m,
        [(QuantityKind.Pressure, "mbar(a)")] = 100m,
        [(QuantityKind.Pressure, "Pa(a)")] = 1m,
        [(QuantityKind.Pressure, "kPa(a)")] = 1_000m,
        [(QuantityKind.Pressure, "MPa(a)")] = 1_000_000m,
        [(QuantityKind.Pressure, "psia")] = PoundForce / (Inch * Inch),
        [(QuantityKind.Mass, "kg")] = 1m,
        [(QuantityKind.Mass, "g")] = 0.001m,
        [(QuantityKind.Mass, "lb")] = Pound,
        [(QuantityKind.Density, "kg/m3")] = 1m,
        [(QuantityKind.Density, "kg/L")] = 1_000m,
        [(QuantityKind.Density, "g/cm3")] = 1_000m,
        [(QuantityKind.Density, "lb/ft3")] = Pound / (Foot * Foot * Foot),
        [(QuantityKind.VolumeFlow, "m3/s")] = 1m,
        [(QuantityKind.VolumeFlow, "m3/h")] = 1m / 3600m,
        [(QuantityKind.VolumeFlow, "L/s")] = 0.001m,
        [(QuantityKind.VolumeFlow, "L/min")] = 0.001m / 60m,
        [(QuantityKind.VolumeFlow, "mL/s")] = 0.000001m,
        [(QuantityKind.VolumeFlow, "US gal/min")] = UsGallon / 60m,
        [(QuantityKind.MassFlow, "kg/s")] = 1m,
        [(QuantityKind.MassFlow, "kg/min")] = 1m / 60m,
        [(QuantityKind.MassFlow, "g/s")] = 0.001m,
        [(QuantityKind.MassFlow, "lb/s")] = Pound,
        [(QuantityKind.MassFlow, "lb/min")] = Pound / 60m,
        [(QuantityKind.Viscosity, "Pa·s")] = 1m,
        [(QuantityKind.Viscosity, "mPa·s")] = 0.001m,
        [(QuantityKind.Viscosity, "cP")] = 0.001m,
        [(QuantityKind.Temperature, "°C")] = 1m,
        [(QuantityKind.Temperature, "°F")] = 5m / 9m,
        [(QuantityKind.Temperature, "K")] = 1m,
        [(QuantityKind.Time, "s")] = 1m,
        [(QuantityKind.Time, "ms")] = 0.001m,
        [(QuantityKind.Time, "min")] = 60m,
        [(QuantityKind.Time, "h")] = 3600m,
        [(QuantityKind.Angle, "°")] = 3.1415926535897932384626433833m / 180m,
        [(QuantityKind.Angle, "rad")] = 1m,
        [(QuantityKind.Force, "N")] = 1m,
        [(QuantityKind.Force, "kN")] = 1_000m,
        [(QuantityKind.Force, "lbf")] = PoundForce,
        [(QuantityKind.Current, "A")] = 1m,
        [(QuantityKind.Current, "mA")] = 0.001m,
        [(QuantityKind.Voltage, "V")] = 1m,
        [(QuantityKind.Voltage, "mV")] = 0.001m,
        [(QuantityKind.Resistance, "ohm")] = 1m,
        [(QuantityKind.Resistance, "mohm")] = 0.001m,
        [(QuantityKind.Speed, "m/s")] = 1m,
        [(QuantityKind.Speed, "km/h")] = 1m / 3.6m,
        [(QuantityKind.Speed, "ft/s")] = Foot,
        [(QuantityKind.Speed, "mph")] = 0.44704m,
        [(QuantityKind.Acceleration, "m/s2")] = 1m,
        [(QuantityKind.Acceleration, "ft/s2")] = Foot,
        [(QuantityKind.Acceleration, "g")] = 9.80665m,
        [(QuantityKind.Stress, "MPa")] = 1_000_000m,
        [(QuantityKind.Stress, "GPa")] = 1_000_000_000m,
        [(QuantityKind.Stress, "Pa")] = 1m,
        [(QuantityKind.Stress, "psi")] = PoundForce / (Inch * Inch),
        [(QuantityKind.Stress, "ksi")] = 1_000m * PoundForce / (Inch * Inch),
        [(QuantityKind.Resistance, "kohm")] = 1000m,
        [(QuantityKind.Capacitance, "F")] = 1m,
        [(QuantityKind.Capacitance, "mF")] = 0.001m,
        [(QuantityKind.Capacitance, "µF")] = 0.000001m,
        [(QuantityKind.Energy, "J")] = 1m,
        [(QuantityKind.Energy, "mJ")] = 0.001m,
        [(QuantityKind.WettingRate, "m3/s/m2")] = 1m,
        [(QuantityKind.WettingRate, "L/min/m2")] = 0.001m / 60m,
        [(QuantityKind.WettingRate, "US gal/min/ft2")] = UsGallon / 60m / (Foot * Foot),
    };

    [Fact]
    public void Every_factor_follows_from_the_definitions()
    {
        foreach (var entry in UnitTable.All.Where(entry => entry.Kind is not (QuantityKind.KFactor or QuantityKind.FlowCoefficient)))
        {
            var exact = (double)Exact[(entry.Kind, entry.Symbol)];

            Assert.True(Math.Abs(entry.Factor - exact) <= exact * 4.5e-16, $"{entry.Kind} {entry.Symbol}: {entry.Factor:R}, exact {exact:R}");
        }
    }

    [Fact]
    public void Every_unit_with_a_definition_is_in_the_table() =>
        Assert.All(Exact.Keys, unit => Assert.Contains(UnitTable.All, entry => (entry.Kind, entry.Symbol) == unit));

    [Theory]
    [InlineData("1 in", QuantityKind.Length, 0.0254)]
    [InlineData("1 psi", QuantityKind.Pressure, 6894.757293168)]
    [InlineData("1 lb", QuantityKind.Mass, 0.45359237)]
    [InlineData("1 lbf", QuantityKind.Force, 4.4482216152605)]
    [InlineData("1 US gal", QuantityKind.Volume, 0.003785411784)]
    [InlineData("1 US gal/min", QuantityKind.VolumeFlow, 6.30901964e-5)]
    [InlineData("1 lb/ft3", QuantityKind.Density, 16.01846337)]
    [InlineData("-40 °F", QuantityKind.Temperature, 233.15)]
    [InlineData("212 °F", QuantityKind.Temperature, 373.15)]
    public void The_printed_values_are_met(string text, QuantityKind kind, double printed)
    {
        Assert.True(QuantityReader.TryRead(text, kind, out var reading, out var fault), fault);

        Assert.Equal(printed, reading.Si, printed * 3e-10);
    }

    /// <summary>IEC 60534-1: Kv = 0.865 Cv, Cv = 1.156 Kv (from memory, printed to three and four figures).</summary>
    [Fact]
    public void Cv_and_Kv_keep_the_ratio_of_the_valve_standard()
    {
        Assert.True(QuantityReader.TryRead("1 Cv", QuantityKind.FlowCoefficient, out var cv, out _));
        Assert.True(QuantityReader.TryRead("1 m3/h", QuantityKind.FlowCoefficient, out var kv, out _));

        Assert.Equal("0.865", (cv.Si / kv.Si).ToString("F3", CultureInfo.InvariantCulture));
        Assert.Equal("1.156", (kv.Si / cv.Si).ToString("F3", CultureInfo.InvariantCulture));
    }

    /// <summary>NFPA 13 converts K by 14.4: K 5.6 gpm/√psi is K 80 (L/min)/√bar (from memory, nominal sizes printed to whole numbers).</summary>
    [Fact]
    public void A_nominal_K_of_sprinklers_is_the_same_in_both_systems()
    {
        Assert.True(QuantityReader.TryRead("5.6 US gal/min/psi^0.5", QuantityKind.KFactor, out var reading, out _));

        var (value, unit) = QuantityWriter.Write(reading.Si, QuantityKind.KFactor, UnitSystem.Metric);

        Assert.Equal("L/min/bar^0.5", unit);
        Assert.Equal(14.4, value / 5.6, 0.05);
        Assert.Equal(80, value, 1.0);
    }
}

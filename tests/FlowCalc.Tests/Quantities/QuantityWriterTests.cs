using FlowCalc.Quantities;

namespace FlowCalc.Tests.Quantities;

public sealed class QuantityWriterTests
{
    [Theory]
    [InlineData(QuantityKind.Pressure, "bar", "psi", "Pa")]
    [InlineData(QuantityKind.VolumeFlow, "L/min", "US gal/min", "m3/s")]
    [InlineData(QuantityKind.MassFlow, "kg/s", "lb/s", "kg/s")]
    [InlineData(QuantityKind.Time, "s", "s", "s")]
    [InlineData(QuantityKind.Length, "m", "ft", "m")]
    [InlineData(QuantityKind.Temperature, "°C", "°F", "K")]
    [InlineData(QuantityKind.Speed, "m/s", "ft/s", "m/s")]
    [InlineData(QuantityKind.Volume, "L", "US gal", "m3")]
    [InlineData(QuantityKind.KFactor, "L/min/bar^0.5", "US gal/min/psi^0.5", "m3/s/Pa^0.5")]
    [InlineData(QuantityKind.FlowCoefficient, "m3/h", "Cv", "m3/s/Pa^0.5")]
    [InlineData(QuantityKind.Stress, "MPa", "psi", "Pa")]
    [InlineData(QuantityKind.Area, "m2", "ft2", "m2")]
    [InlineData(QuantityKind.Mass, "kg", "lb", "kg")]
    [InlineData(QuantityKind.Density, "kg/m3", "lb/ft3", "kg/m3")]
    [InlineData(QuantityKind.Viscosity, "mPa·s", "cP", "Pa·s")]
    [InlineData(QuantityKind.Angle, "°", "°", "rad")]
    [InlineData(QuantityKind.Force, "N", "lbf", "N")]
    [InlineData(QuantityKind.Current, "A", "A", "A")]
    [InlineData(QuantityKind.Voltage, "V", "V", "V")]
    [InlineData(QuantityKind.Resistance, "ohm", "ohm", "ohm")]
    [InlineData(QuantityKind.Acceleration, "m/s2", "ft/s2", "m/s2")]
    [InlineData(QuantityKind.Capacitance, "F", "F", "F")]
    [InlineData(QuantityKind.Energy, "J", "J", "J")]
    [InlineData(QuantityKind.WettingRate, "L/min/m2", "US gal/min/ft2", "m3/s/m2")]
    public void Write_takes_the_unit_of_the_system(QuantityKind kind, string metric, string us, string si)
    {
        Assert.Equal(metric, QuantityWriter.Write(1.0, kind, UnitSystem.Metric).Unit);
        Assert.Equal(us, QuantityWriter.Write(1.0, kind, UnitSystem.Us).Unit);
        Assert.Equal(si, QuantityWriter.Write(1.0, kind, UnitSystem.Si).Unit);
    }

    [Fact]
    public void WriteAbsolute_says_so_in_the_unit()
    {
        Assert.Equal(new WrittenQuantity(1.01325, "bara"), QuantityWriter.WriteAbsolute(101_325, UnitSystem.Metric));
        Assert.Equal("psia", QuantityWriter.WriteAbsolute(101_325, UnitSystem.Us).Unit);
        Assert.Equal(new WrittenQuantity(101_325, "Pa(a)"), QuantityWriter.WriteAbsolute(101_325, UnitSystem.Si));
    }

    [Fact]
    public void Write_gives_back_every_everyday_value_to_the_last_digit()
    {
        foreach (var system in Enum.GetValues<UnitSystem>())
            foreach (var kind in Enum.GetValues<QuantityKind>())
            {
                var unit = QuantityWriter.Write(1.0, kind, system).Unit;
                for (var hundredths = 0; hundredths <= 30_000; hundredths += 7)
                {
                    var value = hundredths / 100.0;
                    Assert.True(QuantityReader.TryRead(value, System.Text.Encoding.UTF8.GetBytes(unit), kind, out var reading, out var fault), fault);

                    Assert.Equal(value, QuantityWriter.Write(reading.Si, kind, system).Value);
                }
            }
    }

    [Fact]
    public void Write_turns_pascals_into_the_bars_that_were_read()
    {
        Assert.Equal(new WrittenQuantity(12.5, "bar"), QuantityWriter.Write(1_250_000.0, QuantityKind.Pressure, UnitSystem.Metric));
        Assert.Equal(new WrittenQuantity(1_250_000.0, "Pa"), QuantityWriter.Write(1_250_000.0, QuantityKind.Pressure, UnitSystem.Si));
    }

    [Fact]
    public void Write_rounds_nothing_away()
    {
        const double si = 1_234_567.890_123_456;

        var written = QuantityWriter.Write(si, QuantityKind.Pressure, UnitSystem.Metric);

        Assert.Equal(si, written.Value * 1e5, 1e-9);
        Assert.NotEqual(Math.Round(written.Value, 9), written.Value);
    }

    [Fact]
    public void Scale_gives_the_values_of_Write_to_the_last_digits()
    {
        foreach (var system in Enum.GetValues<UnitSystem>())
            foreach (var kind in Enum.GetValues<QuantityKind>())
            {
                var (factor, offset, unit) = QuantityWriter.Scale(kind, system);
                foreach (var si in new[] { 0.0, 1.0, 293.15, 1.234e6, 5.6e-7 })
                {
                    var written = QuantityWriter.Write(si, kind, system);

                    Assert.Equal(written.Unit, unit);
                    Assert.Equal(written.Value, si * factor + offset, 1e-14 * (Math.Abs(written.Value) + Math.Abs(offset)));
                }
            }
    }

    [Theory]
    [InlineData(1_234_567.0, QuantityKind.Pressure, UnitSystem.Metric, 3, "12.3 bar")]
    [InlineData(1_234_567.0, QuantityKind.Pressure, UnitSystem.Us, 4, "179.1 psi")]
    [InlineData(1_234_567.0, QuantityKind.Pressure, UnitSystem.Si, 3, "1230000 Pa")]
    [InlineData(1_200_000.0, QuantityKind.Pressure, UnitSystem.Metric, 3, "12 bar")]
    [InlineData(999_600.0, QuantityKind.Pressure, UnitSystem.Metric, 3, "10 bar")]
    [InlineData(-30_000.0, QuantityKind.Pressure, UnitSystem.Metric, 3, "-0.3 bar")]
    [InlineData(123.0, QuantityKind.Pressure, UnitSystem.Metric, 3, "0.00123 bar")]
    [InlineData(0.0, QuantityKind.Length, UnitSystem.Metric, 3, "0 m")]
    [InlineData(0.0041, QuantityKind.Length, UnitSystem.Metric, 3, "4.1 mm")]
    [InlineData(1.5e-6, QuantityKind.Length, UnitSystem.Metric, 3, "1.5 µm")]
    [InlineData(0.25, QuantityKind.Length, UnitSystem.Metric, 3, "0.25 m")]
    [InlineData(0.00635, QuantityKind.Length, UnitSystem.Us, 3, "0.25 in")]
    [InlineData(3.048, QuantityKind.Length, UnitSystem.Us, 3, "10 ft")]
    [InlineData(0.0041, QuantityKind.Length, UnitSystem.Si, 3, "0.0041 m")]
    [InlineData(0.00005, QuantityKind.Volume, UnitSystem.Metric, 3, "50 mL")]
    [InlineData(0.025, QuantityKind.Mass, UnitSystem.Metric, 3, "25 g")]
    [InlineData(1e-5, QuantityKind.Area, UnitSystem.Metric, 3, "10 mm2")]
    [InlineData(Math.PI / 2, QuantityKind.Angle, UnitSystem.Metric, 3, "90°")]
    [InlineData(293.15, QuantityKind.Temperature, UnitSystem.Metric, 3, "20 °C")]
    [InlineData(12_345.0, QuantityKind.Force, UnitSystem.Metric, 3, "12300 N")]
    [InlineData(5.27e-8, QuantityKind.KFactor, UnitSystem.Si, 3, "5.27e-8 m3/s/Pa^0.5")]
    [InlineData(1.2345e7, QuantityKind.Pressure, UnitSystem.Si, 3, "12300000 Pa")]
    [InlineData(9.9949e11, QuantityKind.Pressure, UnitSystem.Si, 3, "999000000000 Pa")]
    [InlineData(9.996e11, QuantityKind.Pressure, UnitSystem.Si, 3, "1e12 Pa")]
    [InlineData(1e-5, QuantityKind.Length, UnitSystem.Si, 3, "0.00001 m")]
    [InlineData(1.0 / 3.0, QuantityKind.Time, UnitSystem.Metric, 15, "0.333333333333333 s")]
    [InlineData(0.95, QuantityKind.Time, UnitSystem.Metric, 1, "0.9 s")]
    [InlineData(0.96, QuantityKind.Time, UnitSystem.Metric, 1, "1 s")]
    public void Text_writes_for_a_sentence(double si, QuantityKind kind, UnitSystem system, int digits, string expected)
    {
        Assert.Equal(expected, QuantityWriter.Text(si, kind, system, digits));
    }

    [Theory]
    [InlineData(QuantityKind.Length, UnitSystem.Metric, 0.2, "0.2 m", 0.19, "190 mm")]
    [InlineData(QuantityKind.Length, UnitSystem.Metric, 1e-4, "0.1 mm", 9e-5, "90 µm")]
    [InlineData(QuantityKind.Length, UnitSystem.Us, 0.3048, "1 ft", 0.2794, "11 in")]
    [InlineData(QuantityKind.Area, UnitSystem.Metric, 0.01, "0.01 m2", 0.009, "9000 mm2")]
    [InlineData(QuantityKind.Area, UnitSystem.Us, 0.09290304, "1 ft2", 0.0064516, "10 in2")]
    [InlineData(QuantityKind.Volume, UnitSystem.Metric, 1e-4, "0.1 L", 9e-5, "90 mL")]
    [InlineData(QuantityKind.Volume, UnitSystem.Us, 3.785411784e-4, "0.1 US gal", 1.6387064e-4, "10 in3")]
    [InlineData(QuantityKind.Mass, UnitSystem.Metric, 0.1, "0.1 kg", 0.09, "90 g")]
    [InlineData(QuantityKind.Current, UnitSystem.Metric, 0.1, "0.1 A", 0.09, "90 mA")]
    [InlineData(QuantityKind.Current, UnitSystem.Us, 0.1, "0.1 A", -0.09, "-90 mA")]
    [InlineData(QuantityKind.Resistance, UnitSystem.Metric, 0.1, "0.1 ohm", 0.09, "90 mohm")]
    [InlineData(QuantityKind.Resistance, UnitSystem.Us, 0.1, "0.1 ohm", 0.09, "90 mohm")]
    public void Text_takes_a_smaller_unit_below_its_limit_and_not_at_it(
        QuantityKind kind, UnitSystem system, double limit, string atLimit, double below, string belowLimit)
    {
        Assert.Equal(atLimit, QuantityWriter.Text(limit, kind, system, 3));
        Assert.Equal(belowLimit, QuantityWriter.Text(below, kind, system, 3));
    }

    [Fact]
    public void Text_stays_text_for_a_value_that_is_not_finite()
    {
        Assert.Equal("NaN bar", QuantityWriter.Text(double.NaN, QuantityKind.Pressure, UnitSystem.Metric, 3));
        Assert.Equal("-Infinity bar", QuantityWriter.Text(double.NegativeInfinity, QuantityKind.Pressure, UnitSystem.Metric, 3));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(16)]
    public void Text_refuses_digits_that_a_double_does_not_have(int digits)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => QuantityWriter.Text(1.0, QuantityKind.Length, UnitSystem.Metric, digits));
    }

    [Fact]
    public void Write_refuses_a_kind_or_system_that_does_not_exist()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => QuantityWriter.Write(1.0, (QuantityKind)99, UnitSystem.Metric));
        Assert.Throws<ArgumentOutOfRangeException>(() => QuantityWriter.Write(1.0, QuantityKind.Length, (UnitSystem)99));
        Assert.Throws<ArgumentOutOfRangeException>(() => QuantityWriter.Write(1.0, (QuantityKind)Enum.GetValues<QuantityKind>().Length, UnitSystem.Metric));
        Assert.Throws<ArgumentOutOfRangeException>(() => QuantityWriter.Write(1.0, QuantityKind.Length, (UnitSystem)Enum.GetValues<UnitSystem>().Length));
    }
}

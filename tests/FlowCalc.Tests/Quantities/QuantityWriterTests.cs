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
    public void Write_takes_the_unit_of_the_system(QuantityKind kind, string metric, string us, string si)
    {
        Assert.Equal(metric, QuantityWriter.Write(1.0, kind, UnitSystem.Metric).Unit);
        Assert.Equal(us, QuantityWriter.Write(1.0, kind, UnitSystem.Us).Unit);
        Assert.Equal(si, QuantityWriter.Write(1.0, kind, UnitSystem.Si).Unit);
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
    }
}

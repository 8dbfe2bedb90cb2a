using System.Diagnostics;
using System.Reflection;
using System.Text;
using FlowCalc.Quantities;

namespace FlowCalc.Tests.Quantities;

public sealed class QuantityReaderTests
{
    [Theory]
    [InlineData("12.5 bar", QuantityKind.Pressure, 1_250_000.0)]
    [InlineData("12 mm", QuantityKind.Length, 0.012)]
    [InlineData("7.3 mm", QuantityKind.Length, 0.0073)]
    [InlineData("1.5e3 mm", QuantityKind.Length, 1.5)]
    [InlineData("1.5E+3 mm", QuantityKind.Length, 1.5)]
    [InlineData("25e-1 m", QuantityKind.Length, 2.5)]
    [InlineData(".5 m", QuantityKind.Length, 0.5)]
    [InlineData("007 m", QuantityKind.Length, 7.0)]
    [InlineData("30 s", QuantityKind.Time, 30.0)]
    [InlineData("2 min", QuantityKind.Time, 120.0)]
    [InlineData("20 °C", QuantityKind.Temperature, 293.15)]
    [InlineData("32 degF", QuantityKind.Temperature, 273.15)]
    [InlineData("90°", QuantityKind.Angle, Math.PI / 2)]
    [InlineData("0.83 kg/L", QuantityKind.Density, 830.0)]
    [InlineData("3 m3/h", QuantityKind.VolumeFlow, 3.0 / 3600.0)]
    public void TryRead_converts_to_SI(string text, QuantityKind kind, double expected)
    {
        var isRead = QuantityReader.TryRead(text, kind, out var reading, out var fault);

        Assert.True(isRead, fault);
        Assert.Equal(kind, reading.Kind);
        Assert.Equal(expected, reading.Si, Math.Abs(expected) * 4e-16);
    }

    [Fact]
    public void TryRead_gives_whole_submultiples_as_the_nearest_double()
    {
        for (var whole = 1; whole <= 5_000; whole++)
        {
            Assert.True(QuantityReader.TryRead($"{whole} mm", QuantityKind.Length, out var length, out _));
            Assert.True(QuantityReader.TryRead($"{whole} L/min", QuantityKind.VolumeFlow, out var flow, out _));

            Assert.Equal((double)(whole / 1000m), length.Si);
            Assert.Equal(whole / 60_000.0, flow.Si);
        }
    }

    [Theory]
    [InlineData("12.5bar")]
    [InlineData("  12.5 bar  ")]
    [InlineData("12.5   bar")]
    [InlineData("12.5\u00A0bar")]
    [InlineData("\u202F12.5\u202Fbar\u00A0")]
    [InlineData("12.5\u2009bar")]
    [InlineData("+12.5 bar")]
    public void TryRead_takes_spaces_and_a_plus_sign(string text)
    {
        Assert.True(QuantityReader.TryRead(text, QuantityKind.Pressure, out var reading, out _));

        Assert.Equal(1_250_000.0, reading.Si);
        Assert.Equal("bar", reading.Unit);
    }

    [Theory]
    [InlineData("-40 °C")]
    [InlineData("\u221240 °C")]
    public void TryRead_takes_the_hyphen_and_the_minus_sign(string text)
    {
        Assert.True(QuantityReader.TryRead(text, QuantityKind.Temperature, out var reading, out _));

        Assert.Equal(233.15, reading.Si, 1e-12);
    }

    [Theory]
    [InlineData("US  gal/min")]
    [InlineData("US\u00A0gal/min")]
    public void TryRead_takes_odd_spaces_inside_a_unit(string unit)
    {
        Assert.True(QuantityReader.TryRead("10 " + unit, QuantityKind.VolumeFlow, out var reading, out _));
        Assert.True(QuantityReader.TryRead(10.0, Encoding.UTF8.GetBytes(unit), QuantityKind.VolumeFlow, out var apart, out _));

        Assert.Equal("US gal/min", reading.Unit);
        Assert.Equal(reading, apart);
    }

    [Theory]
    [InlineData("1/4 in", 0.25 * 0.0254)]
    [InlineData("1 1/2 in", 1.5 * 0.0254)]
    [InlineData("1\u00A01/2\u00A0in", 1.5 * 0.0254)]
    [InlineData("3/8in", 0.375 * 0.0254)]
    [InlineData("-1 1/2 in", -1.5 * 0.0254)]
    [InlineData("5/4 in", 1.25 * 0.0254)]
    [InlineData("1/3 in", 1.0 / 3.0 * 0.0254)]
    [InlineData("15/16 in", 0.9375 * 0.0254)]
    [InlineData("12 11/64 in", 12.171875 * 0.0254)]
    [InlineData("123456/123456 in", 0.0254)]
    public void TryRead_takes_fractions_of_an_inch(string text, double expected)
    {
        Assert.True(QuantityReader.TryRead(text, QuantityKind.Length, out var reading, out var fault), fault);

        Assert.Equal(expected, reading.Si);
    }

    [Theory]
    [InlineData("5 bar", true)]
    [InlineData("5 barg", true)]
    [InlineData("5 bar(g)", true)]
    [InlineData("5 psig", true)]
    [InlineData("5 kPa(g)", true)]
    [InlineData("5 bara", false)]
    [InlineData("5 bar(a)", false)]
    [InlineData("5 psia", false)]
    [InlineData("5 kPa(a)", false)]
    [InlineData("5 Pa(a)", false)]
    [InlineData("5 MPa(a)", false)]
    [InlineData("5 mbar(a)", false)]
    public void TryRead_says_whether_a_pressure_is_gauge(string text, bool isGauge)
    {
        Assert.True(QuantityReader.TryRead(text, QuantityKind.Pressure, out var reading, out var fault), fault);

        Assert.Equal(isGauge, reading.IsGauge);
    }

    [Fact]
    public void TryRead_calls_no_other_kind_gauge()
    {
        Assert.True(QuantityReader.TryRead("5 mm", QuantityKind.Length, out var reading, out _));

        Assert.False(reading.IsGauge);
    }

    [Fact]
    public void TryRead_takes_a_pressure_below_ambient_and_a_vacuum()
    {
        Assert.True(QuantityReader.TryRead("-0.5 bar", QuantityKind.Pressure, out var suction, out _));
        Assert.True(QuantityReader.TryRead("0 bara", QuantityKind.Pressure, out var vacuum, out _));

        Assert.Equal(-50_000.0, suction.Si);
        Assert.Equal(0.0, vacuum.Si);
    }

    [Theory]
    [InlineData("-273.15 °C")]
    [InlineData("-459.67 °F")]
    [InlineData("0 K")]
    public void TryRead_takes_absolute_zero_itself(string text)
    {
        Assert.True(QuantityReader.TryRead(text, QuantityKind.Temperature, out var reading, out var fault), fault);

        Assert.Equal(0.0, reading.Si);
    }

    [Fact]
    public void TryRead_never_gives_a_negative_zero()
    {
        Assert.True(QuantityReader.TryRead("-0 mm", QuantityKind.Length, out var reading, out _));

        Assert.False(double.IsNegative(reading.Si));
    }

    [Theory]
    [InlineData("9007199254740993 m", 9007199254740992.0)]
    [InlineData("0.1000000000000000055511151231257827021181583404541015625 m", 0.1)]
    [InlineData("179769313486231570000000000000000000000 m", 1.7976931348623157e38)]
    [InlineData("2.2250738585072011e-308 m", 2.2250738585072011e-308)]
    [InlineData("123456789012345678901234567890e-29 m", 1.2345678901234567890123456789)]
    [InlineData("18446744073709551616 m", 18446744073709551616.0)]
    [InlineData("0.00000000000000000000000000000000000000000000000000000000000000000000000000000001e1 m", 1e-79)]
    [InlineData("1e22 m", 1e22)]
    [InlineData("1e-22 m", 1e-22)]
    [InlineData("3e23 m", 3e23)]
    [InlineData("9007199254740993e23 m", 9007199254740993e23)]
    public void TryRead_gives_the_nearest_double_of_a_long_number(string text, double expected)
    {
        Assert.True(QuantityReader.TryRead(text, QuantityKind.Length, out var reading, out _));

        Assert.Equal(expected, reading.Si);
    }

    [Fact]
    public void TryRead_gives_the_same_from_bytes_text_and_parts()
    {
        Assert.True(QuantityReader.TryRead("12.5 bar"u8, QuantityKind.Pressure, out var fromBytes, out _));
        Assert.True(QuantityReader.TryRead("12.5 bar", QuantityKind.Pressure, out var fromText, out _));
        Assert.True(QuantityReader.TryRead(12.5, "bar"u8, QuantityKind.Pressure, out var fromParts, out _));

        Assert.Equal(new Reading(QuantityKind.Pressure, 1_250_000.0, true, "bar"), fromBytes);
        Assert.Equal(fromBytes, fromText);
        Assert.Equal(fromBytes, fromParts);
    }

    [Fact]
    public void TryRead_allocates_nothing_for_a_sound_quantity()
    {
        // Without optimisation the compiler boxes what it otherwise does not; the claim is about what is shipped.
        var isOptimised = typeof(QuantityReader).Assembly.GetCustomAttribute<DebuggableAttribute>() is not { IsJITOptimizerDisabled: true };
        Assert.SkipUnless(isOptimised, "The library was built without optimisation; run with -c Release.");
        ReadSome();
        var least = long.MaxValue;

        for (var turn = 0; turn < 5; turn++)
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            ReadSome();
            least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        Assert.Equal(0, least);

        static void ReadSome()
        {
            for (var i = 0; i < 100; i++)
            {
                Assert.True(QuantityReader.TryRead("12.5 bar"u8, QuantityKind.Pressure, out _, out _));
                Assert.True(QuantityReader.TryRead("1.234567890123456789 US gal/min/psi^0.5"u8, QuantityKind.KFactor, out _, out _));
                Assert.True(QuantityReader.TryRead("1 1/2 in"u8, QuantityKind.Length, out _, out _));
                Assert.True(QuantityReader.TryRead(20.0, "°C"u8, QuantityKind.Temperature, out _, out _));
                Assert.True(QuantityReader.TryRead("3 µm", QuantityKind.Length, out _, out _));
            }
        }
    }

    [Fact]
    public void TryRead_refuses_no_text_at_all()
    {
        Assert.Throws<ArgumentNullException>(() => QuantityReader.TryRead((string)null!, QuantityKind.Length, out _, out _));
    }

    [Fact]
    public void TryRead_refuses_a_kind_that_does_not_exist()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => QuantityReader.TryRead("1 m", (QuantityKind)99, out _, out _));
    }
}

using System.Text;
using FlowCalc.Quantities;

namespace FlowCalc.Tests.Quantities;

public sealed class QuantityFaultTests
{
    [Theory]
    [InlineData("1,5 mm", QuantityKind.Length, "read \"1,5 mm\": a comma is never guessed at; write a decimal point, such as 1.5, and no thousands marks")]
    [InlineData("12 mm", QuantityKind.Pressure, "read \"12 mm\": mm is a unit of length; pressure takes bar, mbar, Pa, kPa, MPa, psi, bara, mbar(a), Pa(a), kPa(a), MPa(a), psia")]
    [InlineData("12", QuantityKind.Length, "read \"12\": the unit is missing; length takes m, cm, mm, µm, in, ft")]
    [InlineData("12 furlong", QuantityKind.Length, "read \"12 furlong\": unknown unit furlong; length takes m, cm, mm, µm, in, ft")]
    [InlineData("12 MM", QuantityKind.Length, "read \"12 MM\": unknown unit MM, did you mean mm?; length takes m, cm, mm, µm, in, ft")]
    [InlineData("20 C", QuantityKind.Temperature, "read \"20 C\": unknown unit C, did you mean °C?; temperature takes °C, °F, K")]
    [InlineData("1/2 ft", QuantityKind.Length, "read \"1/2 ft\": fractions are read for inches only; write ft with a decimal point")]
    [InlineData("-300 °C", QuantityKind.Temperature, "read \"-300 °C\": below absolute zero (0 K, -273.15 °C, -459.67 °F)")]
    [InlineData("-1 bara", QuantityKind.Pressure, "read \"-1 bara\": an absolute pressure cannot be below 0; a gauge pressure has a unit without the a, such as bar")]
    public void A_fault_says_what_was_read_and_what_fits(string text, QuantityKind kind, string expected)
    {
        Assert.Equal(expected, Fault(text, kind));
    }

    [Theory]
    [InlineData("1,500.0 mm")]
    [InlineData("1.500,0 mm")]
    [InlineData(",5 mm")]
    [InlineData("1, 5 mm")]
    public void A_comma_is_a_fault(string text) => Assert.Contains("a comma is never guessed at", Fault(text, QuantityKind.Length), StringComparison.Ordinal);

    [Theory]
    [InlineData("1 500 mm")]
    [InlineData("1\u202F500 mm")]
    [InlineData("1'500 mm")]
    [InlineData("1’500 mm")]
    [InlineData("1_500 mm")]
    [InlineData("1 1 1/2 in")]
    public void A_thousands_mark_is_a_fault(string text) => Assert.Contains("no thousands marks", Fault(text, QuantityKind.Length), StringComparison.Ordinal);

    [Theory]
    [InlineData("1.2.3 mm")]
    [InlineData("5. mm")]
    public void A_second_or_trailing_point_is_a_fault(string text) => Assert.Contains("one decimal point", Fault(text, QuantityKind.Length), StringComparison.Ordinal);

    [Theory]
    [InlineData("0x1F mm")]
    [InlineData("0X1F mm")]
    public void Hexadecimal_is_a_fault(string text) => Assert.Contains("decimal digits", Fault(text, QuantityKind.Length), StringComparison.Ordinal);

    [Theory]
    [InlineData("NaN mm")]
    [InlineData("nan mm")]
    [InlineData("Infinity mm")]
    [InlineData("-Infinity mm")]
    [InlineData("inf mm")]
    [InlineData("∞ mm")]
    public void A_number_that_is_not_finite_is_a_fault(string text) => Assert.Contains("not a finite number", Fault(text, QuantityKind.Length), StringComparison.Ordinal);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void A_value_apart_that_is_not_finite_is_a_fault(double value)
    {
        Assert.False(QuantityReader.TryRead(value, "mm"u8, QuantityKind.Length, out _, out var fault));

        Assert.Contains("not a finite number", fault, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1e400 mm")]
    [InlineData("-1e400 mm")]
    [InlineData("1e99999999999999999999 m")]
    [InlineData("1e308 MPa")]
    public void A_number_that_overflows_is_a_fault(string text)
    {
        var kind = text.EndsWith("Pa", StringComparison.Ordinal) ? QuantityKind.Pressure : QuantityKind.Length;

        Assert.Contains("too large", Fault(text, kind), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("\u00A0")]
    public void Empty_text_is_a_fault(string text) => Assert.Contains(": empty; length takes m", Fault(text, QuantityKind.Length), StringComparison.Ordinal);

    [Theory]
    [InlineData("mm", "no number before the unit")]
    [InlineData("about 5 mm", "does not start with a number")]
    [InlineData("- 5 mm", "does not start with a number")]
    [InlineData("--5 mm", "does not start with a number")]
    [InlineData("\u0665 mm", "does not start with a number")]
    [InlineData("e5 mm", "does not start with a number")]
    [InlineData("1e mm", "unknown unit e mm")]
    [InlineData("5 mm mm", "unknown unit mm mm")]
    [InlineData("5 m m", "unknown unit m m")]
    public void Other_text_is_a_fault(string text, string expected) => Assert.Contains(expected, Fault(text, QuantityKind.Length), StringComparison.Ordinal);

    [Theory]
    [InlineData("1/0 in", "a fraction over zero")]
    [InlineData("1 1/0 in", "a fraction over zero")]
    [InlineData("1 5/4 in", "must be under one")]
    [InlineData("1 4/4 in", "must be under one")]
    [InlineData("1-1/2 in", "parted by a space")]
    [InlineData("1.5/2 in", "unknown unit /2 in")]
    [InlineData("1/2/3 in", "unknown unit /3 in")]
    [InlineData("1/2", "the unit is missing")]
    [InlineData("1/2 bar", "bar is a unit of pressure")]
    [InlineData("1/2 mm", "fractions are read for inches only")]
    [InlineData("1234567/8 in", "unknown unit /8 in")]
    [InlineData("1/1234567 in", "unknown unit /1234567 in")]
    [InlineData("/4 in", "does not start with a number")]
    [InlineData("1 /4 in", "unknown unit /4 in")]
    [InlineData("1/ in", "unknown unit / in")]
    public void A_fraction_that_is_no_size_in_inches_is_a_fault(string text, string expected) => Assert.Contains(expected, Fault(text, QuantityKind.Length), StringComparison.Ordinal);

    [Theory]
    [InlineData("5 gal", QuantityKind.Volume)]
    [InlineData("5 Gallon", QuantityKind.Volume)]
    [InlineData("5 gpm", QuantityKind.VolumeFlow)]
    [InlineData("5 GPM", QuantityKind.VolumeFlow)]
    [InlineData("5 gal/min", QuantityKind.VolumeFlow)]
    [InlineData("5 gpm/psi^0.5", QuantityKind.KFactor)]
    [InlineData("5 gal/min/psi^0.5", QuantityKind.KFactor)]
    public void A_bare_gallon_is_a_fault_that_says_why(string text, QuantityKind kind)
    {
        var fault = Fault(text, kind);

        Assert.Contains("which gallon it means is not said", fault, StringComparison.Ordinal);
        Assert.Contains(KindFits(kind), fault, StringComparison.Ordinal);

        static string KindFits(QuantityKind kind) => "takes " + UnitTable.FittingUnits(kind);
    }

    [Fact]
    public void A_unit_of_several_other_kinds_names_them_all()
    {
        Assert.Contains("m3/h is a unit of volume flow and of flow coefficient", Fault("1 m3/h", QuantityKind.Length), StringComparison.Ordinal);
    }

    [Fact]
    public void Long_text_is_a_fault_that_echoes_eighty_characters()
    {
        var fault = Fault(new string('7', 100_000) + " mm", QuantityKind.Length);

        Assert.Contains("longer than 200 bytes", fault, StringComparison.Ordinal);
        Assert.Contains("\"" + new string('7', 80) + "…\"", fault, StringComparison.Ordinal);
    }

    [Fact]
    public void Long_text_of_characters_that_take_three_bytes_each_is_a_fault()
    {
        Assert.Contains("longer than 200 bytes", Fault(new string('\u221E', 300), QuantityKind.Length), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("12 mm")]
    [InlineData("1/2 in")]
    public void Text_of_two_hundred_bytes_is_read_and_of_one_more_is_a_fault(string text)
    {
        var (longest, longer) = (text.PadLeft(200), text.PadLeft(201));

        Assert.True(QuantityReader.TryRead(longest, QuantityKind.Length, out _, out var fault), fault);
        Assert.True(QuantityReader.TryRead(Encoding.UTF8.GetBytes(longest), QuantityKind.Length, out _, out fault), fault);
        Assert.Contains("longer than 200 bytes", Fault(longer, QuantityKind.Length), StringComparison.Ordinal);
        Assert.False(QuantityReader.TryRead(Encoding.UTF8.GetBytes(longer), QuantityKind.Length, out _, out fault));
        Assert.Contains("longer than 200 bytes", fault, StringComparison.Ordinal);
    }

    [Fact]
    public void A_unit_apart_of_two_hundred_bytes_is_read_and_of_one_more_is_a_fault()
    {
        Assert.True(QuantityReader.TryRead(12.0, Encoding.UTF8.GetBytes("mm".PadLeft(200)), QuantityKind.Length, out _, out var fault), fault);
        Assert.False(QuantityReader.TryRead(12.0, Encoding.UTF8.GetBytes("mm".PadLeft(201)), QuantityKind.Length, out _, out fault));
        Assert.Contains("longer than 200 bytes", fault, StringComparison.Ordinal);
        Assert.False(QuantityReader.TryRead(12.0, Encoding.UTF8.GetBytes(new string('x', 200)), QuantityKind.Length, out _, out fault));
        Assert.Contains("unknown unit xx", fault, StringComparison.Ordinal);
    }

    [Fact]
    public void A_long_unit_apart_is_a_fault_that_echoes_eighty_characters()
    {
        Assert.False(QuantityReader.TryRead(1.5, Encoding.UTF8.GetBytes(new string('x', 5_000)), QuantityKind.Length, out _, out var fault));

        Assert.Contains("longer than 200 bytes", fault, StringComparison.Ordinal);
        Assert.Contains("1.5 xx", fault, StringComparison.Ordinal);
        Assert.True(fault.Length < 250);
    }

    [Theory]
    [InlineData("5 mm\n", "\\u000A")]
    [InlineData("5 mm\0", "\\u0000")]
    [InlineData("5 \u202Emm", "\\u202E")]
    [InlineData("5 \u200Bmm", "\\u200B")]
    [InlineData("5 \u2028mm", "\\u2028")]
    [InlineData("5 m\u0336m", "\\u0336")]
    [InlineData("5 \U000E0041mm", "\\U000E0041")]
    [InlineData("5 \"mm", "\\\"mm")]
    [InlineData("5 \\mm", "\\\\mm")]
    public void What_could_hide_in_an_echo_is_escaped(string text, string shown) => Assert.Contains(shown, Fault(text, QuantityKind.Length), StringComparison.Ordinal);

    [Fact]
    public void Bytes_that_are_no_text_are_a_fault()
    {
        Assert.False(QuantityReader.TryRead([(byte)'5', 0xFF, 0xC2], QuantityKind.Length, out _, out var fault));

        Assert.Contains("unknown unit \uFFFD\uFFFD", fault, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(12.0, "bar", "read \"12 bar\": bar is a unit of pressure; length takes m, cm, mm, µm, in, ft")]
    [InlineData(12.5, "", "read \"12.5 \": the unit is missing; length takes m, cm, mm, µm, in, ft")]
    [InlineData(1e308, "\u00A0", "read \"1E+308 \\u00A0\": the unit is missing; length takes m, cm, mm, µm, in, ft")]
    public void A_value_and_unit_apart_have_the_same_faults(double value, string unit, string expected)
    {
        Assert.False(QuantityReader.TryRead(value, Encoding.UTF8.GetBytes(unit), QuantityKind.Length, out var reading, out var fault));

        Assert.Equal(expected, fault);
        Assert.Equal(default, reading);
    }

    [Fact]
    public void A_value_apart_below_absolute_zero_is_a_fault()
    {
        Assert.False(QuantityReader.TryRead(-1.0, "K"u8, QuantityKind.Temperature, out _, out var fault));

        Assert.Equal("read \"-1 K\": below absolute zero (0 K, -273.15 °C, -459.67 °F)", fault);
    }

    static string Fault(string text, QuantityKind kind)
    {
        Assert.False(QuantityReader.TryRead(text, kind, out var reading, out var fault));
        Assert.Equal(default, reading);
        return fault;
    }
}

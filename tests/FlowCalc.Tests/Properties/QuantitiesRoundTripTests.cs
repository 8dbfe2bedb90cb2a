using System.Globalization;
using System.Text;
using CsCheck;
using FlowCalc.Quantities;

namespace FlowCalc.Tests.Properties;

public sealed class QuantitiesRoundTripTests
{
    static readonly Gen<QuantityKind> Kinds = Gen.Enum<QuantityKind>();
    static readonly Gen<UnitSystem> Systems = Gen.Enum<UnitSystem>();

    [Fact]
    public void What_is_written_reads_back_the_same()
    {
        var cases = Gen.Select(Kinds, Systems, Gen.Double[1.0, 10.0], Gen.Int[-12, 9], Gen.Bool);

        cases.Sample((kind, system, digits, exponent, isNegative) =>
        {
            var size = digits * Math.Pow(10, exponent);
            var si = isNegative && kind != QuantityKind.Temperature ? -size : size;
            var written = QuantityWriter.Write(si, kind, system);
            var text = written.Value.ToString("R", CultureInfo.InvariantCulture) + " " + written.Unit;

            var isRead = QuantityReader.TryRead(Encoding.UTF8.GetBytes(text), kind, out var reading, out _);

            // A temperature near absolute zero has lost its digits in the offset of the scale.
            var scale = kind == QuantityKind.Temperature ? Math.Max(size, 273.15) : size;
            return isRead && Math.Abs(reading.Si - si) <= 1e-14 * scale && reading.IsGauge == (kind == QuantityKind.Pressure);
        }, iter: 20_000);
    }

    [Fact]
    public void A_value_of_nine_decimals_comes_back_in_its_unit_to_the_last_digit()
    {
        var decimals = Gen.OneOf(Gen.Long[0, 500_000_000_000_000], Gen.Long[0, 500_000_000_000], Gen.Long[0, 500_000].Select(thousandths => thousandths * 1_000_000));

        Gen.Select(Kinds, Systems, decimals).Sample((kind, system, billionths) =>
        {
            var value = billionths / 1e9;
            var unit = QuantityWriter.Write(1.0, kind, system).Unit;

            var isRead = QuantityReader.TryRead(value, Encoding.UTF8.GetBytes(unit), kind, out var reading, out _);

            return isRead && QuantityWriter.Write(reading.Si, kind, system).Value == value;
        }, iter: 20_000);
    }

    [Fact]
    public void A_sentence_reads_back_to_its_digits()
    {
        var cases = Gen.Select(Kinds, Systems, Gen.Double[1.0, 10.0], Gen.Int[-12, 14], Gen.Int[1, 15]);

        cases.Sample((kind, system, leading, exponent, digits) =>
        {
            // -459.6 °F in two digits is -460 °F, below absolute zero: temperatures start well above it.
            var si = leading * Math.Pow(10, exponent) + (kind == QuantityKind.Temperature ? 200.0 : 0.0);
            var text = QuantityWriter.Text(si, kind, system, digits);

            var isRead = QuantityReader.TryRead(text, kind, out var reading, out _);

            // Rounding is relative to the value shown; a temperature is shown from another zero.
            var scale = kind == QuantityKind.Temperature ? si + 500.0 : si;
            return isRead && Math.Abs(reading.Si - si) <= (0.5 * Math.Pow(10, 1 - digits) + 1e-14) * 1.001 * scale;
        }, iter: 10_000);
    }

    [Fact]
    public void A_number_is_the_double_that_the_framework_reads()
    {
        var sign = Gen.OneOf("", "-", "+");
        var digits = Gen.Char['0', '9'].Array[1, 25].Select(characters => new string(characters));
        var exponents = Gen.OneOf(Gen.Const(""), Gen.Int[-340, 300].Select(e => "e" + e.ToString(CultureInfo.InvariantCulture)));

        Gen.Select(sign, digits, digits, exponents).Sample((plus, whole, decimals, exponent) =>
        {
            var number = plus + whole + "." + decimals + exponent;
            var expected = double.Parse(number, CultureInfo.InvariantCulture);

            var isRead = QuantityReader.TryRead(number + " m", QuantityKind.Length, out var reading, out _);

            return double.IsFinite(expected) ? isRead && reading.Si == expected : !isRead;
        }, iter: 20_000);
    }

    [Fact]
    public void Random_bytes_are_read_or_refused_but_never_throw()
    {
        Gen.Select(Gen.Byte.Array[0, 260], Kinds).Sample((bytes, kind) =>
            QuantityReader.TryRead(bytes, kind, out _, out var fault) == (fault is null) && IsFit(fault), iter: 20_000);
    }

    [Fact]
    public void Shuffled_pieces_of_quantities_are_read_or_refused_but_never_throw()
    {
        var pieces = Gen.OneOf("1", "0", "12.5", "1e", "e9", "-", "+", "\u2212", ".", ",", "/", "/0", " ", "\u00A0", "\u202F", "mm", "in", "bar", "(a)",
            "US gal", "gal", "°C", "√", "^0.5", "m3/h", "NaN", "∞", "'", "\0", "\u202E", "\"", "\uD800", "999999999999999999999", "1e999", "\uFEFF");

        Gen.Select(pieces.Array[0, 9], Kinds).Sample((some, kind) =>
        {
            var text = string.Concat(some);
            var isRead = QuantityReader.TryRead(text, kind, out var reading, out var fault);
            var isReadApart = QuantityReader.TryRead(1.0, Encoding.UTF8.GetBytes(text), kind, out _, out var faultApart);
            return isRead == (fault is null) && isReadApart == (faultApart is null)
                && IsFit(fault) && IsFit(faultApart) && double.IsFinite(reading.Si);
        }, iter: 20_000);
    }

    // The longest list of units and two echoes of at most 80 characters fit in 500.
    static bool IsFit(string? fault) => fault is null || (fault.Length is > 10 and <= 500 && !fault.Any(char.IsControl));
}

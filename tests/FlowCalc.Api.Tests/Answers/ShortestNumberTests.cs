using System.Globalization;
using System.Text;
using CsCheck;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Tests.Answers;

/// <summary>Held to the framework's own shortest text, an implementation of other people by another method.</summary>
public sealed class ShortestNumberTests
{
    [Theory]
    [InlineData(0.0)]
    [InlineData(1.0)]
    [InlineData(-1.5)]
    [InlineData(10)]
    [InlineData(100)]
    [InlineData(0.1)]
    [InlineData(0.3)]
    [InlineData(0.0001)]
    [InlineData(0.00012345)]
    [InlineData(0.00001)]
    [InlineData(999999999999999)]
    [InlineData(123456789012345.6)]
    [InlineData(1e15)]
    [InlineData(1e16)]
    [InlineData(9007199254740993)]
    [InlineData(5e-324)]
    [InlineData(2.2250738585072014e-308)]
    [InlineData(1.7976931348623157e308)]
    [InlineData(4503599627370496.5)]
    [InlineData(9.5367431640625e-7)]
    public void Text_of_a_notable_number_is_the_framework_s(double number) => Assert.Equal(Framework(number), Text(number));

    [Fact]
    public void Text_of_negative_zero_keeps_its_sign() => Assert.Equal("-0", Text(-0.0));

    [Fact]
    public void Text_of_any_number_is_the_framework_s() =>
        Gen.ULong.Select(BitConverter.UInt64BitsToDouble).Where(double.IsFinite).Sample(number => Text(number) == Framework(number), iter: 300_000);

    [Fact]
    public void Text_of_a_number_of_everyday_size_is_the_framework_s() =>
        Gen.Select(Gen.Double[-1, 1], Gen.Int[-8, 20]).Sample((part, power) => Text(part * Math.Pow(10, power)) == Framework(part * Math.Pow(10, power)), iter: 1_000_000);

    [Fact]
    public void Text_of_a_number_with_few_digits_or_a_power_of_two_is_the_framework_s()
    {
        Gen.Select(Gen.Int[-100_000, 100_000], Gen.Int[0, 9]).Sample((whole, places) => Text(whole / Math.Pow(10, places)) == Framework(whole / Math.Pow(10, places)), iter: 300_000);
        Gen.Int[-1074, 1023].Sample(power => Text(Math.ScaleB(1, power)) == Framework(Math.ScaleB(1, power)), iter: 20_000);
    }

    static string Framework(double number) => number.ToString("R", CultureInfo.InvariantCulture);

    static string Text(double number)
    {
        Span<byte> text = stackalloc byte[ShortestNumber.MostBytes];
        return Encoding.ASCII.GetString(text[..ShortestNumber.Write(number, text)]);
    }
}

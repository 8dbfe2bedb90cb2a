using System.Globalization;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Cures;

/// <summary>A size as a changed document says it, and the value that is read from that: what is tried is what is told.</summary>
/// <param name="Text">The text, with its unit.</param>
/// <param name="Si">The value that is read from it, SI; a pressure gauge unless the text says absolute.</param>
readonly record struct SizeText(string Text, double Si)
{
    const int Digits = 6;
    const double DrillStep = 1e-4;
    const double Inch = 0.0254;
    const int PartsOfInch = 64;

    /// <summary>A size in a few digits.</summary>
    public static SizeText Of(double si, QuantityKind kind, UnitSystem units, int digits = Digits) => Read(QuantityWriter.Text(si, kind, units, digits), kind);

    /// <summary>A size to the last digit.</summary>
    public static SizeText Exact(double si, QuantityKind kind)
    {
        var written = QuantityWriter.Write(si, kind, UnitSystem.Si);
        return Read($"{written.Value.ToString("R", CultureInfo.InvariantCulture)} {written.Unit}", kind);
    }

    /// <summary>An absolute pressure to the last digit.</summary>
    public static string Absolute(double pascals) => $"{pascals.ToString("R", CultureInfo.InvariantCulture)} Pa(a)";

    /// <summary>The nearest diameter for which there is a drill: in steps of 0.1 mm, in US units of 1/64 in; one step at least.</summary>
    public static SizeText Drilled(double diameter, UnitSystem units)
    {
        if (units != UnitSystem.Us)
        {
            var tenths = Math.Max(1, Math.Round(diameter / DrillStep));
            return Read($"{(tenths / 10).ToString("0.0", CultureInfo.InvariantCulture)} mm", QuantityKind.Length);
        }
        var parts = Math.Max(1, (int)Math.Round(diameter / Inch * PartsOfInch));
        var (whole, rest) = Math.DivRem(parts, PartsOfInch);
        var common = rest == 0 ? 1 : (int)System.Numerics.BigInteger.GreatestCommonDivisor(rest, PartsOfInch);
        string[] words = [.. whole > 0 ? [Number(whole)] : Array.Empty<string>(), .. rest > 0 ? [$"{Number(rest / common)}/{Number(PartsOfInch / common)}"] : Array.Empty<string>(), "in"];
        return Read(string.Join(' ', words), QuantityKind.Length);
    }

    static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);

    static SizeText Read(string text, QuantityKind kind) =>
        QuantityReader.TryRead(text, kind, out var reading, out var fault) ? new(text, reading.Si) : throw new InvalidOperationException(fault);
}

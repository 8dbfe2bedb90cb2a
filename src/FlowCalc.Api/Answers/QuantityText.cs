using System.Text;

namespace FlowCalc.Api.Answers;

/// <summary>The JSON of quantities, for the places where an answer holds hundreds of them.</summary>
internal static class QuantityText
{
    /// <summary>Longest text of a quantity.</summary>
    public const int MostBytes = ShortestNumber.MostBytes + 64;

    /// <summary>Writes <c>{"value":…,"unit":"…"}</c>.</summary>
    /// <param name="quantity">A finite quantity, its unit one of the closed table, which holds nothing that JSON escapes.</param>
    /// <param name="text">At least <see cref="MostBytes"/> long.</param>
    /// <returns>Bytes written.</returns>
    public static int Write(in Quantity quantity, Span<byte> text)
    {
        var at = Copy("{\"value\":"u8, text);
        at += ShortestNumber.Write(quantity.Value, text[at..]);
        at += Copy(",\"unit\":\""u8, text[at..]);
        at += Encoding.UTF8.GetBytes(quantity.Unit, text[at..]);
        return at + Copy("\"}"u8, text[at..]);
    }

    /// <summary>Copies text, and says how long it is.</summary>
    public static int Copy(ReadOnlySpan<byte> from, Span<byte> to)
    {
        from.CopyTo(to);
        return from.Length;
    }
}

using System.Text;
using System.Text.Json;

namespace FlowCalc.Layouts.Reading;

/// <summary>The text between the quotes of a JSON string, as it stands in the document.</summary>
static class RawText
{
    /// <summary>The string that the raw text stands for; null where an escape is half of a surrogate pair, which no text can hold.</summary>
    public static string? Decode(ReadOnlySpan<byte> raw)
    {
        if (!raw.Contains((byte)'\\')) return Encoding.UTF8.GetString(raw);
        var quoted = new byte[raw.Length + 2];
        quoted[0] = quoted[^1] = (byte)'"';
        raw.CopyTo(quoted.AsSpan(1));
        var reader = new Utf8JsonReader(quoted);
        reader.Read();
        try
        {
            return reader.GetString();
        }
        catch (InvalidOperationException)
        {
            // The only way to learn of a lone surrogate; the caller states it as a fault.
            return null;
        }
    }
}

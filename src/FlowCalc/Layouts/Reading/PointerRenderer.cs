using System.Globalization;
using System.Text;
using System.Text.Json;

namespace FlowCalc.Layouts.Reading;

/// <summary>Finds the JSON pointers of places in a text in one pass over it.</summary>
static class PointerRenderer
{
    /// <summary>The pointers of the values that start at the offsets.</summary>
    /// <param name="utf8">JSON text.</param>
    /// <param name="offsets">Where values start, in ascending order; may repeat.</param>
    public static string[] Render(ReadOnlySpan<byte> utf8, ReadOnlySpan<int> offsets)
    {
        var pointers = new string[offsets.Length];
        var reader = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = int.MaxValue });
        List<Frame> frames = [];
        for (var next = 0; next < offsets.Length && reader.Read();)
        {
            var frame = frames.Count > 0 ? frames[^1] : default;
            switch (reader.TokenType)
            {
                case JsonTokenType.PropertyName:
                    frames[^1] = frame with { NameStart = (int)reader.TokenStartIndex + 1, NameLength = reader.ValueSpan.Length };
                    continue;
                case JsonTokenType.EndObject or JsonTokenType.EndArray:
                    frames.RemoveAt(frames.Count - 1);
                    continue;
            }
            if (frame.IsArray) frames[^1] = frame with { Index = frame.Index + 1 };
            for (; next < offsets.Length && offsets[next] == reader.TokenStartIndex; next++)
                pointers[next] = next > 0 && offsets[next - 1] == offsets[next] ? pointers[next - 1] : Pointer(utf8, frames);
            if (reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray)
                frames.Add(new Frame(reader.TokenType is JsonTokenType.StartArray, -1, 0, 0));
        }
        return pointers;
    }

    static string Pointer(ReadOnlySpan<byte> utf8, List<Frame> frames)
    {
        var pointer = new StringBuilder();
        foreach (var frame in frames)
            pointer.Append('/').Append(frame.IsArray ? frame.Index.ToString(CultureInfo.InvariantCulture) : JsonPointer.Escape(Name(utf8.Slice(frame.NameStart, frame.NameLength))));
        return pointer.ToString();
    }

    static string Name(ReadOnlySpan<byte> raw) => RawText.Decode(raw) ?? Encoding.UTF8.GetString(raw);

    readonly record struct Frame(bool IsArray, int Index, int NameStart, int NameLength);
}

using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace FlowCalc.Api.Answers;

/// <summary>JSON on its way out: parts by the generated serializer, and the many small values of an answer straight into a rented buffer.</summary>
/// <param name="beyond">Where the text goes whenever the buffer is full; null for a buffer that grows.</param>
/// <param name="size">Size of the buffer, bytes.</param>
internal sealed class JsonText(IBufferWriter<byte>? beyond = null, int size = 32 * 1024) : IBufferWriter<byte>, IDisposable
{
    const int LongestUnit = 32;

    // A degree sign or a micro sign stays readable: the answer is never part of a page, and nosniff says so.
    static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, SkipValidation = true };

    [ThreadStatic]
    static Utf8JsonWriter? spare;

    byte[] buffer = ArrayPool<byte>.Shared.Rent(size);
    int length;

    /// <summary>What has not gone beyond the buffer.</summary>
    public ReadOnlyMemory<byte> Bytes => buffer.AsMemory(0, length);

    /// <summary>Writes JSON that is ready.</summary>
    public void Raw(ReadOnlySpan<byte> json)
    {
        json.CopyTo(Room(json.Length));
        length += json.Length;
    }

    /// <summary>Writes JSON that is ready, then a quantity as <c>{"value":…,"unit":"…"}</c>.</summary>
    /// <param name="before">What comes before it.</param>
    /// <param name="quantity">A finite quantity, its unit one of the closed table, which holds nothing that JSON escapes.</param>
    public void Write(ReadOnlySpan<byte> before, in Quantity quantity)
    {
        var room = Room(before.Length + ShortestNumber.MostBytes + LongestUnit + 24);
        before.CopyTo(room);
        var at = before.Length;
        "{\"value\":"u8.CopyTo(room[at..]);
        at += 9;
        at += ShortestNumber.Write(quantity.Value, room[at..]);
        ",\"unit\":\""u8.CopyTo(room[at..]);
        at += 9;
        at += System.Text.Encoding.UTF8.GetBytes(quantity.Unit, room[at..]);
        "\"}"u8.CopyTo(room[at..]);
        length += at + 2;
    }

    /// <summary>Writes JSON that is ready, then a finite number or null.</summary>
    public void Write(ReadOnlySpan<byte> before, double? number)
    {
        Raw(before);
        if (number is not { } known)
        {
            Raw("null"u8);
            return;
        }
        var room = Room(ShortestNumber.MostBytes);
        length += ShortestNumber.Write(known, room);
    }

    /// <summary>Writes JSON that is ready, then a string or null.</summary>
    public void Write(ReadOnlySpan<byte> before, string? text)
    {
        Raw(before);
        if (text is null)
            Raw("null"u8);
        else if (!TryPlain(text))
            Value(text, AnswerJson.Default.String);
    }

    /// <summary>Writes a value by the generated serializer.</summary>
    public void Value<T>(T value, JsonTypeInfo<T> type)
    {
        var writer = spare ?? new Utf8JsonWriter(Stream.Null, Options);
        spare = null;
        writer.Reset(this);
        JsonSerializer.Serialize(writer, value, type);
        writer.Flush();
        writer.Reset(Stream.Null);
        spare = writer;
    }

    public void Advance(int count) => length += count;

    public Memory<byte> GetMemory(int sizeHint = 0)
    {
        Room(Math.Max(sizeHint, 1));
        return buffer.AsMemory(length);
    }

    public Span<byte> GetSpan(int sizeHint = 0) => GetMemory(sizeHint).Span;

    public void Dispose()
    {
        ArrayPool<byte>.Shared.Return(buffer);
        (buffer, length) = ([], 0);
    }

    // Nearly every id is plain ASCII, which stands in JSON as it is.
    bool TryPlain(string text)
    {
        var room = Room(text.Length + 2);
        room[0] = (byte)'"';
        for (var i = 0; i < text.Length; i++)
        {
            var character = text[i];
            if (character is < ' ' or > '~' or '"' or '\\')
                return false;
            room[i + 1] = (byte)character;
        }
        room[text.Length + 1] = (byte)'"';
        length += text.Length + 2;
        return true;
    }

    Span<byte> Room(int bytes)
    {
        if (buffer.Length - length < bytes)
            Spill(bytes);
        return buffer.AsSpan(length);
    }

    void Spill(int bytes)
    {
        if (beyond is not null && length > 0)
        {
            buffer.AsSpan(0, length).CopyTo(beyond.GetSpan(length));
            beyond.Advance(length);
            length = 0;
        }
        if (buffer.Length - length >= bytes)
            return;
        var larger = ArrayPool<byte>.Shared.Rent(Math.Max(length + bytes, 2 * buffer.Length));
        buffer.AsSpan(0, length).CopyTo(larger);
        ArrayPool<byte>.Shared.Return(buffer);
        buffer = larger;
    }
}

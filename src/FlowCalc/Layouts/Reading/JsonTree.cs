using System.Buffers;
using System.Text.Json;

namespace FlowCalc.Layouts.Reading;

/// <summary>
/// A JSON text as a flat list of its values in the order in which they stand, each with its place: what a reader that asks every value a
/// dozen questions needs, at the price of an array's element a question. The framework's reader does the parsing.
/// </summary>
sealed class JsonTree : IDisposable
{
    // Kind and size of a subtree share 32 bits; no text under 256 MiB holds more values.
    const int MostValues = (1 << 28) - 1;

    readonly ReadOnlyMemory<byte> utf8;
    Row[] rows;
    int count;

    JsonTree(ReadOnlyMemory<byte> utf8)
    {
        this.utf8 = utf8;
        rows = ArrayPool<Row>.Shared.Rent(utf8.Length / 8 + 16);
    }

    /// <summary>The outermost value.</summary>
    public JsonValue Root => new(this, 0);

    /// <summary>Parses a text; it must outlive the tree.</summary>
    /// <exception cref="JsonException">The text is not JSON, or nested deeper than <paramref name="depth"/>.</exception>
    public static JsonTree Parse(ReadOnlyMemory<byte> utf8, int depth)
    {
        var tree = new JsonTree(utf8);
        try
        {
            tree.Fill(depth);
            return tree;
        }
        catch
        {
            tree.Dispose();
            throw;
        }
    }

    public void Dispose()
    {
        ArrayPool<Row>.Shared.Return(rows);
        rows = [];
    }

    public JsonValueKind Kind(int row) => (JsonValueKind)(rows[row].KindAndRows >>> 28);

    /// <summary>Entries of an array; members of an object, each of which is a name and a value.</summary>
    public int Entries(int row) => rows[row].Size;

    /// <summary>The row behind a value and all that it holds.</summary>
    public int Behind(int row) => row + (rows[row].KindAndRows & MostValues);

    public int Start(int row) => rows[row].Start;

    /// <summary>The text of a value that is neither array nor object; a string with its quotes, a name of a member without.</summary>
    public ReadOnlySpan<byte> Raw(int row) => utf8.Span.Slice(rows[row].Start, rows[row].Size);

    void Fill(int depth)
    {
        var reader = new Utf8JsonReader(utf8.Span, new JsonReaderOptions { MaxDepth = depth });
        var open = depth <= 64 ? stackalloc int[depth] : new int[depth];
        var level = 0;
        while (reader.Read())
        {
            var start = (int)reader.TokenStartIndex;
            switch (reader.TokenType)
            {
                case JsonTokenType.StartObject or JsonTokenType.StartArray:
                    if (level > 0) rows[open[level - 1]].Size++;
                    open[level++] = count;
                    Add(start, 0, reader.TokenType is JsonTokenType.StartObject ? JsonValueKind.Object : JsonValueKind.Array);
                    break;
                case JsonTokenType.EndObject or JsonTokenType.EndArray:
                    var opened = open[--level];
                    rows[opened].KindAndRows += count - opened - 1;
                    break;
                case JsonTokenType.PropertyName:
                    Add(start + 1, reader.ValueSpan.Length, JsonValueKind.Undefined);
                    break;
                default:
                    if (level > 0) rows[open[level - 1]].Size++;
                    var quotes = reader.TokenType is JsonTokenType.String ? 2 : 0;
                    Add(start, reader.ValueSpan.Length + quotes, Scalar(reader.TokenType));
                    break;
            }
        }
    }

    void Add(int start, int size, JsonValueKind kind)
    {
        if (count == rows.Length) Grow();
        rows[count++] = new Row { Start = start, Size = size, KindAndRows = ((int)kind << 28) + 1 };
    }

    void Grow()
    {
        if (count == MostValues) throw new JsonException($"The text holds more than {MostValues} values.");
        var larger = ArrayPool<Row>.Shared.Rent((int)Math.Min(2L * count, MostValues));
        rows.AsSpan(0, count).CopyTo(larger);
        ArrayPool<Row>.Shared.Return(rows);
        rows = larger;
    }

    static JsonValueKind Scalar(JsonTokenType token) => token switch
    {
        JsonTokenType.String => JsonValueKind.String,
        JsonTokenType.Number => JsonValueKind.Number,
        JsonTokenType.True => JsonValueKind.True,
        JsonTokenType.False => JsonValueKind.False,
        _ => JsonValueKind.Null,
    };

    struct Row
    {
        public int Start, Size, KindAndRows;
    }
}

using System.Text;
using System.Text.Json;

namespace FlowCalc.Layouts.Reading;

/// <summary>Finds points by their ids.</summary>
sealed class PointIndex
{
    readonly Dictionary<string, int> byId;
    readonly Dictionary<string, int>.AlternateLookup<ReadOnlySpan<char>> bySpan;

    public PointIndex(int capacity)
    {
        byId = new Dictionary<string, int>(capacity, StringComparer.Ordinal);
        bySpan = byId.GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <summary>Whether some points have no readable id, so that an unknown one may be theirs.</summary>
    public bool IsPartial { get; set; }

    public bool TryAdd(string id, int index) => byId.TryAdd(id, index);

    /// <summary>Index of the point that a run names; −1, with a fault, where there is none.</summary>
    public int Find(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.String)
        {
            var raw = element.Unquoted;
            Span<char> id = stackalloc char[2 * TextValue.LongestName];
            if (!raw.Contains((byte)'\\') && Encoding.UTF8.TryGetChars(raw, id, out var length) && bySpan.TryGetValue(id[..length], out var index)) return index;
        }
        var name = TextValue.Name(context, element, "a point's id");
        if (name is null) return -1;
        if (byId.TryGetValue(name, out var found)) return found;
        if (IsPartial) return -1;
        if (context.Faults.IsFull) context.Faults.Add(element, "");
        else context.Faults.Add(element, $"read {Said.Name(name)}: no point has that id{NearNames.Advice(context, name, byId.Keys)}");
        return -1;
    }
}

using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace FlowCalc.Workbench.Sheets;

/// <summary>Writes a document for people: a member a line, but what fits into one line in one line.</summary>
public static class SheetText
{
    const int Widest = 160, Indent = 2;

    static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes a document, ending with a new line. What is written is read as the same document.</summary>
    public static string Write(JsonObject root)
    {
        ArgumentNullException.ThrowIfNull(root);
        var text = new StringBuilder();
        Write(text, root, 0);
        return text.Append('\n').ToString();
    }

    /// <summary>A value as a field shows it: text bare, nothing for null, all else as JSON.</summary>
    public static string Words(JsonNode? node) => node is JsonValue value && value.TryGetValue<string>(out var words) ? words : node?.ToJsonString(Plain) ?? "";

    static void Write(StringBuilder text, JsonNode? node, int depth)
    {
        if (OneLine(node, Widest - Indent * depth) is { } line && depth > 0) text.Append(line);
        else if (node is JsonObject members) Block(text, '{', '}', members, depth, (member, at) =>
        {
            text.Append(JsonSerializer.Serialize(member.Key, Plain)).Append(": ");
            Write(text, member.Value, at);
        });
        else if (node is JsonArray entries) Block(text, '[', ']', entries, depth, (entry, at) => Write(text, entry, at));
        else text.Append(node?.ToJsonString(Plain) ?? "null");
    }

    static void Block<T>(StringBuilder text, char open, char close, IEnumerable<T> parts, int depth, Action<T, int> write)
    {
        text.Append(open);
        var isFirst = true;
        foreach (var part in parts)
        {
            text.Append(isFirst ? "\n" : ",\n").Append(' ', Indent * (depth + 1));
            write(part, depth + 1);
            isFirst = false;
        }
        if (!isFirst) text.Append('\n').Append(' ', Indent * depth);
        text.Append(close);
    }

    // Null where it does not fit. A line is given up as soon as it is too long, so that the work stays in proportion to the text.
    static string? OneLine(JsonNode? node, int room)
    {
        switch (node)
        {
            case JsonObject { Count: 0 }:
                return "{}";
            case JsonObject members:
                return Joined(members, room, member => OneLine(member.Value, room) is { } value ? $"{JsonSerializer.Serialize(member.Key, Plain)}: {value}" : null) is { } inside ? $"{{ {inside} }}" : null;
            case JsonArray entries:
                return Joined(entries, room, entry => OneLine(entry, room)) is { } list ? $"[{list}]" : null;
            default:
                var text = node?.ToJsonString(Plain) ?? "null";
                return text.Length <= room ? text : null;
        }
    }

    static string? Joined<T>(IEnumerable<T> parts, int room, Func<T, string?> write)
    {
        var line = new StringBuilder();
        foreach (var part in parts)
        {
            if (write(part) is not { } text || line.Length + text.Length + 6 > room) return null;
            line.Append(line.Length == 0 ? "" : ", ").Append(text);
        }
        return line.ToString();
    }
}

using System.Globalization;
using System.Text.Json.Nodes;
using FlowCalc.Layouts.Editing;

namespace FlowCalc.Workbench.Sheets;

/// <summary>Places of a JSON document by pointer (RFC 6901).</summary>
public static class JsonPlace
{
    /// <summary>A pointer made of names.</summary>
    public static string Of(params ReadOnlySpan<string> names) => names.IsEmpty ? "" : "/" + EditPath.Of(names);

    /// <summary>The names of a pointer, from the outermost inwards.</summary>
    public static string[] Names(string pointer)
    {
        ArgumentNullException.ThrowIfNull(pointer);
        return pointer.Length == 0 ? [] : [.. pointer[1..].Split('/').Select(name => name.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal))];
    }

    /// <summary>What stands there; null where nothing does.</summary>
    public static JsonNode? Find(JsonNode root, string pointer)
    {
        var node = root;
        foreach (var name in Names(pointer))
        {
            node = node switch
            {
                JsonObject members => members[name],
                JsonArray entries when Index(name) is { } at && at < entries.Count => entries[at],
                _ => null,
            };
            if (node is null) return null;
        }
        return node;
    }

    /// <summary>Puts a value there, making the objects on the way; null takes away what is there, and the objects on the way that are then empty.</summary>
    /// <exception cref="InvalidOperationException">The way leads through a single value, or past the end of a list.</exception>
    public static void Set(JsonObject root, string pointer, JsonNode? value)
    {
        var names = Names(pointer);
        var owners = new JsonNode[names.Length];
        owners[0] = root;
        for (var at = 0; at + 1 < names.Length; at++)
        {
            var next = Find(owners[at], Of(names[at]));
            if (next is null)
            {
                if (value is null) return;
                next = new JsonObject();
                Put(owners[at], names[at], next);
            }
            owners[at + 1] = next;
        }
        if (value is not null) Put(owners[^1], names[^1], value);
        else Take(owners, names);
    }

    static void Take(JsonNode[] owners, string[] names)
    {
        for (var at = names.Length - 1; at >= 0; at--)
        {
            if (owners[at] is JsonArray entries && Index(names[at]) is { } index && index < entries.Count)
            {
                entries.RemoveAt(index);
                return;
            }
            if (owners[at] is not JsonObject members || !members.Remove(names[at]) || members.Count > 0 || at < 2) return;
        }
    }

    static void Put(JsonNode owner, string name, JsonNode value)
    {
        switch (owner)
        {
            case JsonObject members:
                members[name] = value;
                break;
            case JsonArray entries when Index(name) is { } at && at < entries.Count:
                entries[at] = value;
                break;
            case JsonArray entries when Index(name) == entries.Count:
                entries.Add(value);
                break;
            default:
                throw new InvalidOperationException($"\"{name}\" names no place there.");
        }
    }

    static int? Index(string name) => int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out var at) ? at : null;
}

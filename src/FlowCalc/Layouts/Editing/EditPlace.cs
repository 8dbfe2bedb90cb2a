using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using FlowCalc.Layouts.Reading;
using JsonValue = System.Text.Json.Nodes.JsonValue;

namespace FlowCalc.Layouts.Editing;

/// <summary>A place in a document: a member of an object, there or not, or an entry of a list.</summary>
/// <param name="owner">The object or the list.</param>
/// <param name="name">Name of the member.</param>
/// <param name="index">Place of the entry in a list.</param>
/// <param name="pointer">JSON pointer of the place.</param>
readonly struct EditPlace(JsonNode owner, string name, int index, string pointer)
{
    public string Pointer => pointer;

    /// <summary>Goes from name to name; null, with what is wrong, where one of them names nothing. The last may name a member that is not there yet.</summary>
    public static EditPlace? Find(ReadingContext context, JsonObject root, ImmutableArray<string> names, out string? fault)
    {
        fault = null;
        JsonNode? node = root;
        var pointer = new StringBuilder();
        for (var at = 0; ; at++)
        {
            var isLast = at == names.Length - 1;
            var (name, index) = (names[at], -1);
            switch (node)
            {
                case JsonObject members:
                    if (!isLast && !members.ContainsKey(name)) fault = NamesNothing(context, names, at, [.. members.Select(member => member.Key)]);
                    break;
                case JsonArray entries:
                    index = IndexOf(entries, names, at, out var known);
                    if (index < 0) fault = NamesNothing(context, names, at, known);
                    break;
                default:
                    fault = $"read {Said.Name(EditPath.Of([.. names]))}: {Where(names, at)} is a single value, which has no {Said.Name(name)}; set it as a whole";
                    break;
            }
            if (fault is not null) return null;
            pointer.Append('/').Append(index < 0 ? JsonPointer.Escape(name) : index.ToString(CultureInfo.InvariantCulture));
            if (isLast) return new EditPlace(node!, name, index, pointer.ToString());
            node = node is JsonArray list ? list[index] : node![name];
        }
    }

    /// <summary>Puts a value there.</summary>
    public void Set(JsonNode? value)
    {
        if (owner is JsonArray entries) entries[index] = value;
        else owner[name] = value;
    }

    /// <summary>Takes away what is there.</summary>
    public void Remove(out string? fault)
    {
        fault = null;
        if (owner is JsonArray entries) entries.RemoveAt(index);
        else if (!((JsonObject)owner).Remove(name)) fault = $"read null: there is no {Said.Name(name)} to take away";
    }

    static int IndexOf(JsonArray entries, ImmutableArray<string> names, int at, out ImmutableArray<string> known)
    {
        var name = names[at];
        known = (at, names[0]) switch
        {
            (1, "points") => [.. entries.Select(point => TextOf(point, "id"))],
            (1, "runs") => [.. entries.Select(run => TextOf(run, "id") is { Length: > 0 } id ? id : $"{TextOf(run, "from")}-{TextOf(run, "to")}")],
            (2, "cases") when names[1] == "attitudes" => [.. entries.Select(attitude => TextOf(attitude, "name"))],
            _ => [.. Enumerable.Range(0, entries.Count).Select(index => index.ToString(CultureInfo.InvariantCulture))],
        };
        return known.IndexOf(name);
    }

    static string TextOf(JsonNode? entry, string member) => entry is JsonObject { } fields && fields[member] is JsonValue value && value.TryGetValue<string>(out var text) ? text : "";

    static string NamesNothing(ReadingContext context, ImmutableArray<string> names, int at, ImmutableArray<string> known) =>
        $"read {Said.Name(EditPath.Of([.. names]))}: {Where(names, at)} has no {Said.Name(names[at])}{NearNames.Advice(context, names[at], known)}";

    static string Where(ImmutableArray<string> names, int at) => at == 0 ? "the layout" : Said.Name(EditPath.Of([.. names[..at]]));
}

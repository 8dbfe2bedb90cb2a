using System.Text;
using System.Text.Json;

namespace FlowCalc.Layouts.Reading;

/// <summary>A dictionary of the document: one's own tubes, nozzles, fittings or zones by name, in its order.</summary>
/// <typeparam name="T">What an entry becomes; null for one that could not be read, which may still be named.</typeparam>
sealed class NamedEntries<T>
    where T : class
{
    static readonly NamedEntries<T> None = new();

    readonly Dictionary<string, T?> byName = new(StringComparer.Ordinal);
    readonly List<string> names = [];
    readonly List<(T? Entry, JsonValue Element)> placed = [];

    /// <summary>Whether the dictionary itself could not be read, so that nothing can be said of names it may hold.</summary>
    public bool IsBroken { get; private init; }

    public IReadOnlyList<string> Names => names;

    /// <summary>The entries that could be read.</summary>
    public IEnumerable<T> Entries => placed.Select(one => one.Entry).OfType<T>();

    /// <summary>Every entry with its place in the document.</summary>
    public IReadOnlyList<(T? Entry, JsonValue Element)> Placed => placed;

    public bool TryFind(string name, out T? entry) => byName.TryGetValue(name, out entry);

    /// <summary>Reads a dictionary; an empty one where it is missing.</summary>
    /// <param name="context">The reading.</param>
    /// <param name="element">The dictionary.</param>
    /// <param name="what">What it holds, such as <c>tubes</c>.</param>
    /// <param name="read">Reads one entry.</param>
    public static NamedEntries<T> Read(ReadingContext context, JsonValue element, string what, Func<ReadingContext, string, JsonValue, T?> read)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return None;
        if (element.ValueKind is not JsonValueKind.Object)
        {
            context.Faults.Add(element, $"read {Said.Value(element)}: {what} are an object that holds one entry a name");
            return new NamedEntries<T> { IsBroken = true };
        }
        var entries = new NamedEntries<T>();
        var passes = 0;
        foreach (var property in element.EnumerateObject())
        {
            context.Pass(passes++);
            var raw = property.RawName;
            var name = RawText.Decode(raw);
            if (name is null || TextValue.NameFlaw(name) is not null)
                context.Faults.Add(property.Value, $"read the name {Said.Name(name ?? Encoding.UTF8.GetString(raw))}: a name among {what} has 1 to 200 characters, none of them a control character or half of a surrogate pair");
            else if (entries.byName.ContainsKey(name))
                context.Faults.Add(property.Value, $"repeated: {what} have {Said.Name(name)} already");
            else
            {
                entries.names.Add(name);
                var entry = read(context, name, property.Value);
                entries.byName.Add(name, entry);
                entries.placed.Add((entry, property.Value));
            }
        }
        return entries;
    }
}

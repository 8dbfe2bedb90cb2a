using System.Collections.Immutable;

namespace FlowCalc.Layouts.Reading;

/// <summary>The nodes of a circuit, in the order in which they are first named, and how often each is.</summary>
sealed class CircuitNodes
{
    readonly List<string> names = [];
    readonly Dictionary<string, int> places = new(StringComparer.Ordinal);
    readonly List<(JsonValue Element, int Count)> uses = [];

    public ImmutableArray<string> Names => [.. names];

    /// <summary>The place of a node that an end of a part names; −1 where it is missing or no name.</summary>
    public int End(ReadingContext context, JsonValue element)
    {
        if (TextValue.Name(context, element, "a node's name") is not { } name) return -1;
        if (!places.TryGetValue(name, out var place))
        {
            places.Add(name, place = names.Count);
            names.Add(name);
            uses.Add((element, 0));
        }
        uses[place] = uses[place] with { Count = uses[place].Count + 1 };
        return place;
    }

    /// <summary>The place of a node that parts have named; a fault where none has.</summary>
    public int? Find(ReadingContext context, JsonValue element)
    {
        if (TextValue.Name(context, element, "a node's name") is not { } name) return null;
        if (places.TryGetValue(name, out var place)) return place;
        context.Faults.Add(element, $"read {Said.Name(name)}: no end of the source or of a part is at that node{NearNames.Advice(context, name, names)}");
        return null;
    }

    /// <summary>Faults of nodes at which nothing is joined.</summary>
    /// <param name="context">The reading.</param>
    /// <param name="chassis">The node that is the chassis, which may stand alone; null for none.</param>
    public void CheckEnds(ReadingContext context, int? chassis)
    {
        for (var place = 0; place < names.Count; place++)
        {
            if (uses[place].Count > 1 || place == chassis) continue;
            var others = names.Where((_, at) => at != place).ToArray();
            context.Faults.Add(uses[place].Element, $"read {Said.Name(names[place])}: nothing else ends at that node, so that no current can pass{NearNames.Advice(context, names[place], others)}");
        }
    }
}

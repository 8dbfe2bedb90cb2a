using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.InteropServices;
using System.Text.Json.Serialization.Metadata;

namespace FlowCalc.Api.Answers;

/// <summary>The JSON of lists that are the same objects in answer after answer, written once by the generated serializer.</summary>
internal static class SharedText
{
    static readonly ConcurrentDictionary<object, byte[]> Texts = new(ReferenceEqualityComparer.Instance);

    /// <summary>The JSON of a list.</summary>
    /// <param name="list">One of the few lists that live as long as the service: whatever is asked for here is kept.</param>
    /// <param name="type">How to write it.</param>
    public static ReadOnlySpan<byte> Of<T>(ImmutableArray<T> list, JsonTypeInfo<ImmutableArray<T>> type)
    {
        var key = ImmutableCollectionsMarshal.AsArray(list)!;
        if (Texts.TryGetValue(key, out var known)) return known;
        using var text = new JsonText();
        text.Value(list, type);
        return Texts.GetOrAdd(key, text.Bytes.ToArray());
    }
}

using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text.Json;
using FlowCalc.ReferenceData;

namespace FlowCalc.Examples;

/// <summary>The example layout documents that travel with the library.</summary>
public static class ExampleCatalogue
{
    const string Folder = "examples/", Extension = ".json";

    static readonly FrozenDictionary<string, byte[]> ByName;

    static ExampleCatalogue()
    {
        ByName = EmbeddedFile.Under(Folder)
            .ToFrozenDictionary(path => path[Folder.Length..^Extension.Length], EmbeddedFile.Read, StringComparer.Ordinal);
        All = [.. ByName.OrderBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => new Example(pair.Key, TitleOf(pair.Value)))];
    }

    /// <summary>All examples, in ordinal order of their names.</summary>
    public static ImmutableArray<Example> All { get; }

    /// <summary>The document of a name.</summary>
    /// <param name="name">Name; case counts.</param>
    /// <returns>The document as UTF-8 JSON, or null where no example has that name.</returns>
    public static ReadOnlyMemory<byte>? Find(string name) =>
        ByName.TryGetValue(name, out var document) ? document : default(ReadOnlyMemory<byte>?);

    static string TitleOf(byte[] document)
    {
        using var json = JsonDocument.Parse(document);
        return json.RootElement.GetProperty("title").GetString() ?? throw new InvalidDataException("An example without a title.");
    }
}

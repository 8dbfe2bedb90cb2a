using System.Collections.Frozen;
using System.Collections.Immutable;

namespace FlowCalc.ReferenceData;

/// <summary>Every source that a table of the library names.</summary>
public static class SourceCatalogue
{
    static readonly FrozenDictionary<string, Source> ByKey;

    static SourceCatalogue()
    {
        All = [.. CsvTable.Embedded("sources.csv").Rows.Select(Read)];
        ByKey = All.ToFrozenDictionary(source => source.Key, StringComparer.Ordinal);
    }

    /// <summary>All sources, in the order of the table.</summary>
    public static ImmutableArray<Source> All { get; }

    /// <summary>The source of a key.</summary>
    /// <param name="key">Key as a table names it; case counts.</param>
    /// <returns>The source, or null where no source has that key.</returns>
    public static Source? Find(string key) => ByKey.GetValueOrDefault(key);

    static Source Read(CsvRow row) => new(
        row.Text("key"), row.OptionalText("author"), row.Text("title"), row.OptionalText("edition"), row.OptionalText("year"),
        row.OptionalText("publisher"), row.OptionalText("where"), row.Text("access"));
}

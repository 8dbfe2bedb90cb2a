using System.Text.RegularExpressions;
using FlowCalc.ReferenceData;

namespace FlowCalc.Tests.ReferenceData;

/// <summary>What holds for every table that the library carries, whoever adds it.</summary>
public partial class EveryTableTests
{
    const string SourcesPath = "sources.csv";

    /// <summary>Endings that name a unit: a column with one holds numbers.</summary>
    static readonly string[] Units = ["_mm", "_um", "_m", "_c", "_k", "_kg_m3", "_mpa_s", "_pa", "_bar", "_m3_h", "_fraction", "_percent", "_power", "_coefficient", "_kg_mol", "_j_mol_k", "_mol_m3", "_m3_mol", "_mpa", "_mm2", "_n", "_g", "_ohm_km", "_s", "_months", "_m3_kg", "_m3_kg_k", "_count"];

    /// <summary>Columns of text.</summary>
    static readonly string[] Texts = ["id", "title", "note", "kind", "material", "quantity", "form", "component", "first", "second", "confidence", "standard", "people", "mixture", "source", "size", "property_class", "application", "direction", "basis", "attitudes", "protection"];

    public static TheoryData<string> Tables => [.. EmbeddedFile.Under("").Where(path => path.EndsWith(".csv", StringComparison.Ordinal))];

    public static TheoryData<string> SourcedTables => [.. Tables.Select(row => row.Data).Where(path => path != SourcesPath)];

    [Fact]
    public void The_library_carries_the_tables_of_agents_and_stock() =>
        Assert.Superset(
            new HashSet<string> { "agents/blend-pairs.csv", "agents/blends.csv", "agents/critical-terms.csv", "agents/expanding.csv", "agents/fluid-terms.csv", "agents/fluids.csv", "agents/liquids.csv", "agents/mixture-coefficients.csv", "agents/mixtures.csv", "agents/nitrogen-solubility.csv", "agents/saturated-viscosities.csv", "agents/saturation-guesses.csv", "agents/water.csv", "mounts/bolt-classes.csv", "mounts/bolt-loads.csv", "mounts/bolt-sizes.csv", "mounts/load-cases.csv", "mounts/materials.csv", SourcesPath, "stock/clip-spacings.csv", "stock/fittings.csv", "stock/materials.csv", "stock/tubes.csv", "stock/fuse-times.csv", "stock/wires.csv", "upkeep/rules.csv", "agents/flooding.csv", "agents/exposure.csv", "applications/applications.csv", "applications/requirements.csv" },
            Tables.Select(row => row.Data).ToHashSet());

    [Theory]
    [MemberData(nameof(Tables))]
    public void A_header_is_snake_case(string path) =>
        Assert.All(CsvTable.Embedded(path).Columns, column => Assert.Matches(SnakeCase(), column));

    [Theory]
    [MemberData(nameof(SourcedTables))]
    public void A_column_names_its_unit_or_holds_text(string path) =>
        Assert.All(CsvTable.Embedded(path).Columns, column => Assert.True(IsNumeric(column) || Texts.Contains(column), column));

    [Theory]
    [MemberData(nameof(SourcedTables))]
    public void A_column_with_a_unit_holds_numbers(string path)
    {
        var table = CsvTable.Embedded(path);

        foreach (var row in table.Rows)
            foreach (var column in table.Columns.Where(IsNumeric))
                _ = row.OptionalNumber(column);
    }

    [Theory]
    [MemberData(nameof(SourcedTables))]
    public void Every_row_ends_in_keys_of_known_sources(string path)
    {
        var table = CsvTable.Embedded(path);

        Assert.Equal("source", table.Columns[^1]);
        Assert.All(table.Rows.SelectMany(row => row.Sources), key => Assert.NotNull(SourceCatalogue.Find(key)));
        Assert.All(table.Rows, row => Assert.Equal(row.Sources.Distinct(), row.Sources));
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void A_table_starts_with_its_header_and_has_no_comment(string path) =>
        Assert.All(CsvTable.Embedded(path).Rows, row => Assert.False(row.Text(CsvTable.Embedded(path).Columns[0]).StartsWith('#')));

    [Fact]
    public void Every_source_is_used_by_a_table()
    {
        var used = SourcedTables.Select(row => row.Data).SelectMany(path => CsvTable.Embedded(path).Rows).SelectMany(row => row.Sources).ToHashSet();

        Assert.All(SourceCatalogue.All, source => Assert.Contains(source.Key, used));
    }

    [Fact]
    public void Sources_have_the_agreed_columns_and_stand_in_the_order_of_their_keys()
    {
        Assert.Equal(["key", "author", "title", "edition", "year", "publisher", "where", "access"], CsvTable.Embedded(SourcesPath).Columns);
        Assert.Equal(SourceCatalogue.All.Select(source => source.Key).Order(StringComparer.Ordinal), SourceCatalogue.All.Select(source => source.Key));
        Assert.All(SourceCatalogue.All, source => Assert.Matches(Key(), source.Key));
    }

    [Fact]
    public void A_source_is_found_by_its_key_alone()
    {
        Assert.Equal("W. Wagner, A. Pruss", SourceCatalogue.Find("iapws-95")?.Author);
        Assert.Null(SourceCatalogue.Find("IAPWS-95"));
    }

    static bool IsNumeric(string column) => Units.Any(unit => column.EndsWith(unit, StringComparison.Ordinal));

    [GeneratedRegex("^[a-z][a-z0-9]*(_[a-z0-9]+)*$")]
    private static partial Regex SnakeCase();

    [GeneratedRegex("^[a-z0-9]+(-[a-z0-9]+)*$")]
    private static partial Regex Key();
}

using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;
using FlowCalc.ReferenceData;

namespace FlowCalc.Upkeep;

/// <summary>A usual rule of upkeep, which holds where the document states none of its name.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Source">Whose rule it is, in words.</param>
public sealed record UsualRule(ServiceRule Rule, string Source)
{
    /// <summary>Names of the usual rules.</summary>
    public const string Service = "service", PressureTest = "pressure-test";

    static readonly ImmutableArray<CsvRow> Rows = CsvTable.Embedded("upkeep/rules.csv").Rows;

    /// <summary>The usual rules of an application: its own where there are such, else the general ones.</summary>
    /// <param name="application">The application.</param>
    /// <returns>One rule a name.</returns>
    public static ImmutableArray<UsualRule> Of(Application application)
    {
        var word = DocumentReader.WordOf(application);
        return [.. Rows.GroupBy(row => row.Text("id")).Select(rows => Read(rows.FirstOrDefault(row => word is not null && row.Text("application") == word) ?? rows.First(row => row.OptionalText("application") is null)))];
    }

    static UsualRule Read(CsvRow row)
    {
        var sources = row.Sources.Select(key => SourceCatalogue.Find(key) is { } source ? $"{source.Title} ({source.Access.TrimEnd('.')})" : key);
        return new(new(row.Text("id"), row.Text("basis") == "test" ? DateBasis.LastTest : DateBasis.LastService, null, (int)row.Number("interval_months")), string.Join("; ", sources));
    }
}

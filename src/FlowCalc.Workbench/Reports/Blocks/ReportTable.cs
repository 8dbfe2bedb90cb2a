using System.Collections.Immutable;
using System.Globalization;

namespace FlowCalc.Workbench.Reports.Blocks;

/// <summary>A table.</summary>
/// <param name="Caption">What it holds.</param>
/// <param name="Columns">Its columns.</param>
/// <param name="Rows">Its rows, a cell a column.</param>
public sealed record ReportTable(string Caption, ImmutableArray<ReportColumn> Columns, ImmutableArray<ImmutableArray<string>> Rows) : ReportBlock
{
    /// <summary>A table of columns by their headings; one that begins with <c>#</c> holds numbers.</summary>
    internal static ReportTable Of(string caption, string[] columns, IEnumerable<string[]> rows) =>
        new(caption, [.. columns.Select(title => title.StartsWith('#') ? new ReportColumn(title[1..], true) : new ReportColumn(title))], [.. rows.Select(row => row.ToImmutableArray())]);

    /// <summary>The first of many words for a cell, and how many there are besides.</summary>
    internal static string Few(string[] words, int most) =>
        string.Join(", ", words.Take(most)) + (words.Length > most ? string.Create(CultureInfo.InvariantCulture, $" and {words.Length - most} more") : "");
}

using CsCheck;
using FlowCalc.Workbench.Pictures;
using FlowCalc.Workbench.Reports.Blocks;
using FlowCalc.Workbench.Reports.Paper;

namespace FlowCalc.Workbench.Tests.Reports;

public sealed class PaperTextTests
{
    static readonly Gen<string> Texts = Gen.Char["abcWWi  \t\n.−½\ud83d\udd25é"].Array[0, 300].Select(letters => new string(letters));

    [Fact]
    public void Lines_hold_every_letter_in_order_and_fit_their_width() =>
        Gen.Select(Texts, Gen.Double[12, 400]).Sample((text, width) =>
        {
            var lines = PaperText.Lines(text, 9, width);
            var kept = string.Concat(lines).Replace(" ", "", StringComparison.Ordinal);
            // Half a pair of surrogates becomes the replacement character, which may be wider than any letter.
            return kept == PaperText.Clean(text).Replace(" ", "", StringComparison.Ordinal) && lines.All(line => Lettering.Width(line, 9) <= width + 1e-9 || line.EnumerateRunes().Count() == 1);
        }, iter: 3_000);

    [Fact]
    public void Widths_of_columns_fill_no_more_than_there_is() =>
        Gen.Select(Texts.Array[1, 9], Gen.Double[60, 500]).Sample((titles, width) =>
        {
            var table = ReportTable.Of("", titles, [titles]);
            var widths = ColumnWidths.Of(table, 7.5, 6, width);
            return widths.Length == titles.Length && widths.All(one => one > 0) && widths.Sum() <= width + 1e-6;
        }, iter: 3_000);
}

using FlowCalc.Workbench.Reports;
using FlowCalc.Workbench.Reports.Paper;
using FlowCalc.Workbench.Tests.Solving;

namespace FlowCalc.Workbench.Tests.Reports;

public sealed class ReportPdfTests
{
    static readonly string[] Hostile = ["<script>alert(1)</script>", new('W', 180), "x\ud83dy", "\u05d0\u05d1\u202e<b>", "]]>&amp;\"'", "日本 \U0001f525", "(a) Tj ET \\( endstream"];

    public static TheoryData<string> Examples => Solved.Examples;

    [Theory, MemberData(nameof(Examples))]
    public void Every_example_is_written_within_its_sheets_with_its_fonts_cautions_and_nothing_approved(string example)
    {
        var source = new ReportSource(Solved.Check(example));

        var pdf = new ReadPdf(Write(source, PaperSize.A4));

        Assert.Empty(pdf.Outside);
        var (all, embedded) = pdf.Descriptors();
        Assert.True(all >= 2 && all == embedded, $"{all} fonts, {embedded} embedded");
        Assert.All(pdf.Fonts, font => Assert.Contains("+DejaVu Sans", font, StringComparison.Ordinal));
        Assert.Contains(Solved.Layout(example).Title!, pdf.Text, StringComparison.Ordinal);
        foreach (var caution in Findings.Cautions.For(Solved.Layout(example))) Assert.Contains(caution, pdf.Text.Replace("• ", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("is approved", pdf.Text, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(Solved.Of(example).Discharge is not null, pdf.Lines.Any(line => line.EndsWith("Discharge by case", StringComparison.Ordinal)));
        for (var page = 1; page <= pdf.Pages.Length; page++) Assert.Contains(pdf.Lines, line => line == $"{ReportContent.Foot} page {page} of {pdf.Pages.Length}");
    }

    [Theory]
    [InlineData(PaperSize.A4, 595.28, 841.89)]
    [InlineData(PaperSize.Letter, 612, 792)]
    public void Sheets_have_the_size_asked_for_upright_or_turned(PaperSize paper, double width, double height)
    {
        var pdf = new ReadPdf(Write(Demo(), paper));

        Assert.All(pdf.Pages, page =>
        {
            Assert.Equal(width, Math.Min(page.Width, page.Height), tolerance: 0.01);
            Assert.Equal(height, Math.Max(page.Width, page.Height), tolerance: 0.01);
        });
    }

    [Fact]
    public void Same_report_gives_the_same_bytes_on_any_number_of_threads()
    {
        var content = ReportContent.Of(Demo(), TestContext.Current.CancellationToken);
        var files = new byte[6][];

        Parallel.For(0, files.Length, at => files[at] = ReportPdf.Write(content, PaperSize.A4, CancellationToken.None));

        Assert.All(files, file => Assert.Equal(files[0], file));
        Assert.NotEqual(files[0], ReportPdf.Write(content, PaperSize.Letter, TestContext.Current.CancellationToken));
    }

    [Fact]
    public void Report_bears_the_date_and_the_name_that_its_user_gives_and_no_other()
    {
        var dated = new ReadPdf(Write(Demo() with { Date = "14 March, second draft", By = "A. Planner" }, PaperSize.A4));
        var blank = new ReadPdf(Write(Demo(), PaperSize.A4));

        Assert.Contains("Date 14 March, second draft", dated.Lines);
        Assert.Contains("Prepared by A. Planner", dated.Lines);
        Assert.Equal(dated.Pages.Length, dated.Lines.Count(line => line.EndsWith("14 March, second draft", StringComparison.Ordinal) && !line.StartsWith("Date", StringComparison.Ordinal)));
        Assert.Contains("Date", blank.Lines);
        Assert.DoesNotContain(DateTime.UtcNow.Year.ToString(System.Globalization.CultureInfo.InvariantCulture), blank.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Mount_circuit_and_dates_stand_in_the_report_of_a_document_that_has_them_and_what_is_missing_is_named()
    {
        var demo = new ReadPdf(Write(new(Solved.Check("raid-pickup", new(2026, 11, 25))), PaperSize.A4));
        var boat = new ReadPdf(Write(new(Solved.Check("boat-engine-space")), PaperSize.A4));

        foreach (var title in (string[])["Mount of the bottle", "Firing circuit", "Dates, weight and gauge", "Test of the built system"])
        {
            Assert.Contains(demo.Lines, line => line.EndsWith(title, StringComparison.Ordinal));
            Assert.DoesNotContain(boat.Lines, line => line.EndsWith(title, StringComparison.Ordinal));
        }
        Assert.Empty(demo.Outside);
        Assert.Contains("Judged for 2026-11-25", demo.Text, StringComparison.Ordinal);
        Assert.Contains("The document has no mount", boat.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Hostile_names_are_text_and_break_nothing()
    {
        var layout = Solved.Renamed(at => Hostile[at % Hostile.Length] + at).Layout with { Title = string.Join(' ', Hostile), Note = new string('n', 9_000) + " (end) \\" };
        var source = new ReportSource(Solved.Check("raid-pickup") with { Layout = layout }) with { Date = "<b>", By = "</body>" };

        var pdf = new ReadPdf(Write(source, PaperSize.Letter));

        Assert.Empty(pdf.Outside);
        Assert.Contains("<script>alert(1)</script>0", pdf.Text, StringComparison.Ordinal);
        Assert.Contains("(a) Tj ET \\( endstream6", pdf.Text, StringComparison.Ordinal);
        Assert.Contains("(end) \\", pdf.Text, StringComparison.Ordinal);
        Assert.Contains("Prepared by </body>", pdf.Lines);
    }

    [Fact]
    public void Tables_go_over_pages_with_their_headings()
    {
        var pdf = new ReadPdf(Write(Demo(), PaperSize.A4));

        Assert.True(pdf.Lines.Count(line => line == "equation form, symbols in SI units where it holds source") >= 2);
    }

    static ReportSource Demo() => new(Solved.Check("raid-pickup"));

    static byte[] Write(ReportSource source, PaperSize paper) => ReportPdf.Write(ReportContent.Of(source, TestContext.Current.CancellationToken), paper, TestContext.Current.CancellationToken);
}

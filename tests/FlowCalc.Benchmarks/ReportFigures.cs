using FlowCalc.Checks;
using FlowCalc.Examples;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Workbench.Hosting;
using FlowCalc.Workbench.Reports;
using FlowCalc.Workbench.Reports.Paper;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;

namespace FlowCalc.Benchmarks;

/// <summary>Time of the demo's report from the text of its document: read, solved, discharged in every case, cut, and written.</summary>
internal static class ReportFigures
{
    const string Demo = "raid-pickup";

    static readonly DateOnly Day = new(2026, 11, 25);

    public static void Print()
    {
        var document = ExampleCatalogue.Find(Demo) ?? throw new InvalidOperationException("There is no demo.");
        using var services = new ServiceCollection().BuildServiceProvider();
        var markup = new StaticMarkup(services, NullLoggerFactory.Instance);
        // Nothing in it waits, so that the task has ended when it is returned.
        QuickFigures.Line("report-html", QuickFigures.Once(() => markup.RenderAsync<Report>(new() { [nameof(Report.Content)] = Content(document) }).GetAwaiter().GetResult()));
        QuickFigures.Line("report-pdf", QuickFigures.Once(() => ReportPdf.Write(Content(document), PaperSize.A4, CancellationToken.None)));
    }

    static ReportContent Content(ReadOnlyMemory<byte> document)
    {
        var layout = LayoutReader.Read(document, new LayoutReaderOptions { Today = Day }).Layout ?? throw new InvalidOperationException("The document has faults.");
        var check = LayoutCheck.Of(layout, new(UnitSystem.Metric, Day), TaskScheduler.Default, CancellationToken.None);
        if (check.Discharge is null) throw new InvalidOperationException("There is no discharge.");
        return ReportContent.Of(new ReportSource(check), CancellationToken.None);
    }
}

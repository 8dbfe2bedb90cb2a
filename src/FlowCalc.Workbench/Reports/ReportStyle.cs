using FlowCalc.Workbench.Pictures;
using FlowCalc.Workbench.Reports.Paper;

namespace FlowCalc.Workbench.Reports;

/// <summary>The style of the report as a page, on the screen and in print.</summary>
static class ReportStyle
{
    /// <summary>The style sheet.</summary>
    /// <param name="paper">The sheets that it is printed on.</param>
    public static string Of(PaperSize paper) => $$"""
        @page { size: {{(paper == PaperSize.A4 ? "A4" : "letter")}}; margin: 17mm 16mm 18mm;
          @bottom-left { content: "{{ReportContent.Foot}}"; font: 7.5pt {{Lettering.Families}}; color: {{PaperInk.Of(Ink.Muted)}}; }
          @bottom-right { content: "page " counter(page) " of " counter(pages); font: 7.5pt {{Lettering.Families}}; color: {{PaperInk.Of(Ink.Muted)}}; } }
        @page wide { size: {{(paper == PaperSize.A4 ? "A4" : "letter")}} landscape; }
        * { box-sizing: border-box; }
        html { color-scheme: light; }
        body { font: 9.5pt/1.4 {{Lettering.Families}}; color: {{PaperInk.Of(Ink.Line)}}; background: #fff; max-width: 180mm; margin: 0 auto; padding: 6mm 4mm; overflow-wrap: anywhere; }
        h1 { font-size: 18pt; line-height: 1.2; margin: 0 0 2mm; }
        h2 { font-size: 13pt; border-bottom: 1px solid; margin: 7mm 0 3mm; padding-bottom: 1mm; }
        h3 { font-size: 10.5pt; margin: 4mm 0 2mm; }
        h1, h2, h3, caption, figcaption { break-after: avoid; }
        p { margin: 0 0 2.5mm; orphans: 2; widows: 2; }
        .sub, figure p { color: {{PaperInk.Of(Ink.Muted)}}; }
        dl { display: grid; grid-template-columns: 40mm 1fr; margin: 4mm 0; }
        dt { color: {{PaperInk.Of(Ink.Muted)}}; } dd { margin: 0; }
        .blank { border-bottom: 1px solid {{PaperInk.Of(Ink.Muted)}}; width: 65mm; height: 1.3em; }
        .verdict { border: 1px solid; border-left-width: 5px; padding: 3mm 4mm; margin: 0 0 4mm; break-inside: avoid; }
        .verdict strong { display: block; font-size: 11pt; } .verdict span { color: {{PaperInk.Of(Ink.Line)}}; font-size: 10.5pt; }
        .pass { color: {{PaperInk.Of(Ink.Pass)}}; } .note { color: {{PaperInk.Of(Ink.Note)}}; } .warn { color: {{PaperInk.Of(Ink.Warn)}}; } .fail { color: {{PaperInk.Of(Ink.Fail)}}; }
        table { border-collapse: collapse; width: 100%; margin: 0 0 4mm; font-size: 7.5pt; line-height: 1.3; }
        caption { text-align: left; font-weight: bold; font-size: 8.5pt; padding: 1mm 0; }
        thead { display: table-header-group; } tr { break-inside: avoid; }
        th { background: {{PaperInk.Of(Ink.Grid)}}; text-align: left; vertical-align: top; border-bottom: 1px solid; padding: 0.8mm 1.4mm; overflow-wrap: normal; }
        td { vertical-align: top; border-bottom: 1px solid {{PaperInk.Of(Ink.Grid)}}; padding: 0.8mm 1.4mm; }
        .number { text-align: right; } td.number { overflow-wrap: normal; }
        figure { margin: 0 0 4mm; break-inside: avoid; } figcaption { font-weight: bold; }
        figure svg { display: block; max-width: 100%; height: auto; max-height: 200mm; margin: 1mm auto; }
        figure.wide { page: wide; } figure.wide svg { max-height: 140mm; }
        figure p { font-size: 8pt; }
        .sign { display: flex; gap: 8mm; margin: 12mm 0 0; break-inside: avoid; font-size: 7.5pt; color: {{PaperInk.Of(Ink.Muted)}}; }
        .sign div { border-top: 1px solid {{PaperInk.Of(Ink.Line)}}; flex: 5; } .sign div + div { flex: 3; }
        @media print { body { max-width: none; padding: 0; } }
        """;
}

using System.Globalization;
using FlowCalc.Workbench.Pictures;
using FlowCalc.Workbench.Reports.Blocks;
using FlowCalc.Workbench.Reports.Paper;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace FlowCalc.Workbench.Reports;

/// <summary>Writes a report as PDF: text that can be searched and copied, pictures as vectors, fonts with it, an outline of its sections. The same report gives the same bytes.</summary>
public static class ReportPdf
{
    // The file bears no clock: the report's date is what its user writes on it.
    static readonly DateTime NoTime = new(2000, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    const string NoMark = "0000000000000000";

    /// <summary>Writes it.</summary>
    /// <param name="content">The report.</param>
    /// <param name="paper">The sheets.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <returns>The file.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static byte[] Write(ReportContent content, PaperSize paper, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(content);
        using var document = new PdfDocument { Language = "en" };
        document.Info.Title = PaperText.Clean(content.Title);
        document.Info.Subject = ReportContent.Foot;
        (document.Info.CreationDate, document.Info.ModificationDate) = (NoTime, NoTime);
        (document.Internals.FirstDocumentID, document.Internals.SecondDocumentID) = (NoMark, NoMark);
        var sheet = Sheet.Of(paper);
        using (var pages = new PaperPages(document, sheet, cancel))
        {
            pages.Turn();
            Opening(pages, content);
            for (var at = 0; at < content.Sections.Length; at++) Section(document, pages, content.Sections[at], at + 1, cancel);
        }
        for (var at = 0; at < document.PageCount; at++) Edges(document.Pages[at], content, at + 1, document.PageCount);
        using var file = new MemoryStream();
        document.Save(file, false);
        SameBytes.Settle(file.GetBuffer().AsSpan(0, (int)file.Length));
        return file.ToArray();
    }

    static void Opening(PaperPages pages, ReportContent content)
    {
        const double size = 17, name = 110, line = 14;
        foreach (var text in PaperText.Lines(content.Title, size, pages.Sheet.Column, true))
        {
            pages.Write(text, Sheet.Side, pages.Y, size, isBold: true);
            pages.Y += 22;
        }
        pages.Write("Calculation report of a fire-suppression line", Sheet.Side, pages.Y, 11, Ink.Muted);
        pages.Y += 24;
        foreach (var (what, value) in content.Facts)
        {
            pages.Write(what, Sheet.Side, pages.Y, 9, Ink.Muted);
            if (value.Length == 0) pages.Graphics.DrawLine(PaperPicture.Pen(Ink.Muted, 0.6), Sheet.Side + name, pages.Y + 10, Sheet.Side + name + 180, pages.Y + 10);
            foreach (var text in PaperText.Lines(value, 9, pages.Sheet.Column - name))
            {
                pages.Write(text, Sheet.Side + name, pages.Y, 9);
                pages.Y += line;
            }
        }
        pages.Y += 8;
    }

    static void Section(PdfDocument document, PaperPages pages, ReportSection section, int number, CancellationToken cancel)
    {
        const double heading = 31;
        if (section.Blocks is [ReportFigure { IsWide: true }, ..]) pages.Turn(isLandscape: true);
        else pages.Need(Math.Min(pages.Sheet.Room, heading + (section.Blocks is [var first, ..] ? PaperBlocks.Beginning(first, pages.Sheet) : 0)));
        if (!pages.IsFresh) pages.Y += 6;
        var title = string.Create(CultureInfo.InvariantCulture, $"{number}  {section.Title}");
        document.Outlines.Add(title, pages.Page);
        pages.Write(title, Sheet.Side, pages.Y, 13, isBold: true);
        pages.Rule(pages.Y + 17, pages.Sheet.Column, Ink.Line, 1);
        pages.Y += 25;
        foreach (var block in section.Blocks)
        {
            cancel.ThrowIfCancellationRequested();
            PaperBlocks.Write(pages, block);
        }
    }

    static void Edges(PdfPage page, ReportContent content, int number, int count)
    {
        const double size = 7.5;
        var sheet = new Sheet(page.Width.Point, page.Height.Point);
        using var graphics = XGraphics.FromPdfPage(page, XGraphicsPdfPageOptions.Append);
        var (right, foot, font) = (sheet.Width - Sheet.Side, sheet.Height - 30, PaperFonts.Of(size));
        var pen = PaperPicture.Pen(Ink.Muted, 0.5);
        var brush = PaperPicture.Brush(Ink.Muted);
        var title = PaperText.Lines(content.Title, size, sheet.Column * 0.7);
        graphics.DrawString(title[0] + (title.Count > 1 ? " …" : ""), font, brush, Sheet.Side, 36);
        var date = content.Facts.First(fact => fact.Name == "Date").Value;
        var shown = PaperText.Lines(date, size, sheet.Column * 0.25)[0];
        graphics.DrawString(shown, font, brush, right - Lettering.Width(shown, size), 36);
        graphics.DrawLine(pen, Sheet.Side, 42, right, 42);
        graphics.DrawLine(pen, Sheet.Side, foot - 12, right, foot - 12);
        graphics.DrawString(ReportContent.Foot, font, brush, Sheet.Side, foot);
        var pages = string.Create(CultureInfo.InvariantCulture, $"page {number} of {count}");
        graphics.DrawString(pages, font, brush, right - Lettering.Width(pages, size), foot);
    }
}

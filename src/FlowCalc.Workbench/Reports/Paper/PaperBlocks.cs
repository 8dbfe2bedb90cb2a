using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Pictures;
using FlowCalc.Workbench.Reports.Blocks;

namespace FlowCalc.Workbench.Reports.Paper;

/// <summary>Writes the blocks of a section.</summary>
static class PaperBlocks
{
    const double Letters = 9, Line = 12.2;

    /// <summary>Room that the beginning of a block needs, so that a heading before it does not stand alone.</summary>
    public static double Beginning(ReportBlock block, Sheet sheet) => block switch
    {
        ReportFigure figure => Fit(figure.Picture, sheet).Height,
        ReportTable => 60,
        _ => 2 * Line,
    };

    /// <summary>Writes one.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="block"/> is of no known kind.</exception>
    public static void Write(PaperPages pages, ReportBlock block)
    {
        switch (block)
        {
            case ReportParagraph paragraph:
                Text(pages, paragraph.Text, 0);
                break;
            case ReportHeading heading:
                // With room for what it is over.
                pages.Need(90);
                pages.Y += 4;
                pages.Write(PaperText.Clean(heading.Text), Sheet.Side, pages.Y, 10, isBold: true);
                pages.Y += 17;
                break;
            case ReportVerdict verdict:
                Verdict(pages, verdict);
                break;
            case ReportList list:
                foreach (var item in list.Items)
                {
                    pages.Need(2 * Line);
                    pages.Write("•", Sheet.Side + 3, pages.Y, Letters);
                    Text(pages, item, 14, 3);
                }
                pages.Y += 4;
                break;
            case ReportTable table:
                PaperTable.Write(pages, table);
                break;
            case ReportFigure figure:
                Figure(pages, figure.Picture, figure.IsWide);
                break;
            case ReportSignature signature:
                Signature(pages, signature.Role);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(block), block, "No such block.");
        }
    }

    static void Text(PaperPages pages, string text, double indent, double after = 6, double size = Letters, Ink ink = Ink.Line)
    {
        var lines = PaperText.Lines(text, size, pages.Sheet.Column - indent);
        // Neither the first nor the last line of a paragraph stands alone.
        pages.Need(Math.Min(lines.Count, 2) * Line);
        for (var at = 0; at < lines.Count; at++)
        {
            if (pages.Left < Line || (at == lines.Count - 2 && lines.Count > 3 && pages.Left < 2 * Line)) pages.Turn();
            pages.Write(lines[at], Sheet.Side + indent, pages.Y, size, ink);
            pages.Y += Line;
        }
        pages.Y += after;
    }

    static void Verdict(PaperPages pages, ReportVerdict verdict)
    {
        const double beside = 10;
        var ink = Severities.Ink(verdict.Verdict);
        var lines = PaperText.Lines(verdict.Text, 10.5, pages.Sheet.Column - 2 * beside);
        var height = 18 + lines.Count * 14.0 + 12;
        pages.Need(height);
        pages.Graphics.DrawRectangle(PaperPicture.Pen(ink, 1.2), Sheet.Side, pages.Y, pages.Sheet.Column, height);
        pages.Graphics.DrawRectangle(PaperPicture.Brush(ink), Sheet.Side, pages.Y, 4, height);
        pages.Write(Severities.Heading(verdict.Verdict), Sheet.Side + beside, pages.Y + 7, 11, ink, true);
        for (var at = 0; at < lines.Count; at++) pages.Write(lines[at], Sheet.Side + beside, pages.Y + 24 + at * 14, 10.5);
        pages.Y += height + 10;
    }

    // A picture that is much wider than the text lies on a sheet of its own, turned, where its letters stay larger.
    static void Figure(PaperPages pages, Picture picture, bool isWide)
    {
        const double title = 14;
        if (isWide && !pages.IsLandscape) pages.Turn(isLandscape: true);
        var (scale, height) = Fit(picture, pages.Sheet);
        pages.Need(height);
        pages.Write(PaperText.Lines(picture.Title, Letters, pages.Sheet.Column, true)[0], Sheet.Side, pages.Y, Letters, isBold: true);
        pages.Y += title;
        PaperPicture.Draw(pages.Graphics, picture, Sheet.Side + (pages.Sheet.Column - scale * picture.Width) / 2, pages.Y, scale);
        pages.Y += scale * picture.Height + 4;
        Text(pages, picture.Description, 0, 10, 8, Ink.Muted);
        if (isWide) pages.Turn();
    }

    static (double Scale, double Height) Fit(Picture picture, Sheet sheet)
    {
        const double title = 14, mostOfWords = 0.25;
        var words = Math.Min(mostOfWords * sheet.Room, title + 12 + PaperText.Lines(picture.Description, 8, sheet.Column).Count * Line);
        var scale = Math.Min(1, Math.Min(sheet.Column / picture.Width, (sheet.Room - words) / picture.Height));
        return (scale, scale * picture.Height + words);
    }

    static void Signature(PaperPages pages, string role)
    {
        const double height = 46;
        pages.Need(height);
        var (y, half) = (pages.Y + 30, pages.Sheet.Column * 0.62);
        pages.Graphics.DrawLine(PaperPicture.Pen(Ink.Line, 0.7), Sheet.Side, y, Sheet.Side + half, y);
        pages.Graphics.DrawLine(PaperPicture.Pen(Ink.Line, 0.7), Sheet.Side + half + 20, y, pages.Sheet.Width - Sheet.Side, y);
        pages.Write($"{role}: name and signature", Sheet.Side, y + 2, 7.5, Ink.Muted);
        pages.Write("date", Sheet.Side + half + 20, y + 2, 7.5, Ink.Muted);
        pages.Y += height;
    }
}

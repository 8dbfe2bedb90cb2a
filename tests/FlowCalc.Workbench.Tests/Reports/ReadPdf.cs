using System.Text;
using System.Text.RegularExpressions;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace FlowCalc.Workbench.Tests.Reports;

/// <summary>A PDF as somebody reads it who did not write it: by another library.</summary>
sealed class ReadPdf
{
    readonly byte[] file;

    public ReadPdf(byte[] file)
    {
        this.file = file;
        using var document = PdfDocument.Open(file);
        Pages = [.. document.GetPages().Select(page => (page.Width, page.Height))];
        Lines = [.. document.GetPages().SelectMany(LinesOf)];
        Outside = [.. document.GetPages().SelectMany(page => page.Letters
            .Where(letter => letter.BoundingBox.Left < -0.5 || letter.BoundingBox.Bottom < -0.5 || letter.BoundingBox.Right > page.Width + 0.5 || letter.BoundingBox.Top > page.Height + 0.5)
            .Select(letter => $"{letter.Value} on page {page.Number}"))];
        Fonts = [.. document.GetPages().SelectMany(page => page.Letters).Select(letter => letter.FontName!).Distinct().Order(StringComparer.Ordinal)];
    }

    /// <summary>Width and height of each page, points.</summary>
    public (double Width, double Height)[] Pages { get; }

    /// <summary>Its text, a line for all words of one height.</summary>
    public string[] Lines { get; }

    /// <summary>Letters that are not on their page.</summary>
    public string[] Outside { get; }

    /// <summary>Names of the fonts of its text.</summary>
    public string[] Fonts { get; }

    /// <summary>All lines as one, without what lines are broken by.</summary>
    public string Text => string.Join(' ', Lines);

    /// <summary>How many descriptors of fonts there are, and how many of them hold their font.</summary>
    public (int All, int Embedded) Descriptors()
    {
        var text = Encoding.Latin1.GetString(file);
        return (Regex.Count(text, @"/Type/FontDescriptor"), Regex.Count(text, @"/FontFile2 \d+ 0 R"));
    }

    static IEnumerable<string> LinesOf(Page page)
    {
        // Words of one line of print stand on one base line; letters of drawings lie anywhere.
        const double alike = 0.6;
        List<(double Base, List<Word> Words)> lines = [];
        foreach (var word in page.GetWords().Where(word => word.TextOrientation == TextOrientation.Horizontal).OrderByDescending(word => word.Letters[0].StartBaseLine.Y))
        {
            var height = word.Letters[0].StartBaseLine.Y;
            if (lines.Count == 0 || lines[^1].Base - height > alike) lines.Add((height, []));
            lines[^1].Words.Add(word);
        }
        return lines.Select(line => string.Join(' ', line.Words.OrderBy(word => word.BoundingBox.Left).Select(word => word.Text)));
    }
}

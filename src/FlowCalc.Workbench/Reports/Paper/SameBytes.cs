using System.Text;
using System.Text.RegularExpressions;

namespace FlowCalc.Workbench.Reports.Paper;

/// <summary>Takes chance out of a PDF: the library tags subsets of fonts and the document's metadata by chance, in as many bytes as stand here for them.</summary>
static partial class SameBytes
{
    /// <summary>Puts the tags of fonts in the order in which they come, and the marks of the metadata to nothing.</summary>
    /// <param name="pdf">The document, changed in place.</param>
    public static void Settle(Span<byte> pdf)
    {
        // One byte, one character: places in the text are places in the document.
        var text = Encoding.Latin1.GetString(pdf);
        Dictionary<string, string> tags = new(StringComparer.Ordinal);
        foreach (Match found in FontTag().Matches(text))
        {
            var tag = found.Groups[1];
            if (!tags.TryGetValue(tag.Value, out var settled)) tags[tag.Value] = settled = "FLOWC" + (char)('A' + tags.Count);
            Encoding.Latin1.GetBytes(settled, pdf[tag.Index..]);
        }
        foreach (Match found in Mark().Matches(text))
        {
            var mark = found.Groups[1];
            Encoding.Latin1.GetBytes(new Guid().ToString(), pdf[mark.Index..]);
        }
    }

    [GeneratedRegex(@"/(?:FontName|BaseFont)/([A-Z]{6})\+")]
    private static partial Regex FontTag();

    [GeneratedRegex("<xmpMM:(?:Document|Instance)ID>uuid:([0-9a-f-]{36})<")]
    private static partial Regex Mark();
}

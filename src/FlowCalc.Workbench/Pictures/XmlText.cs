using System.Buffers;
using System.Xml;

namespace FlowCalc.Workbench.Pictures;

/// <summary>Text for an XML document, which has no place for some characters even when they are escaped (XML 1.0, section 2.2).</summary>
static class XmlText
{
    const char Replacement = '\uFFFD';

    static readonly SearchValues<char> Doubtful = SearchValues.Create([.. Enumerable.Range(0, char.MaxValue + 1).Select(code => (char)code).Where(character => !XmlConvert.IsXmlChar(character))]);

    /// <summary>The text with the replacement character for whatever XML has no place for.</summary>
    public static string Of(string text)
    {
        if (text.AsSpan().IndexOfAny(Doubtful) < 0) return text;
        var characters = text.ToCharArray();
        for (var at = 0; at < characters.Length; at++)
        {
            if (XmlConvert.IsXmlChar(characters[at])) continue;
            if (at + 1 < characters.Length && XmlConvert.IsXmlSurrogatePair(characters[at + 1], characters[at])) at++;
            else characters[at] = Replacement;
        }
        return new(characters);
    }
}

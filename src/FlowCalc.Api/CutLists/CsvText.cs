using System.Globalization;
using System.Text;

namespace FlowCalc.Api.CutLists;

/// <summary>A table as comma-separated text (RFC 4180): lines end in CR LF, numbers are invariant, and no text of a document becomes a formula.</summary>
/// <remarks>
/// A spreadsheet takes text that begins with =, +, -, @ or a control character for a formula, or may; such text gets an apostrophe before it, as OWASP's page on CSV injection advises
/// (from memory). Where any text is not plain ASCII the table starts with a byte order mark, without which some spreadsheets misread it.
/// </remarks>
internal sealed class CsvText
{
    readonly StringBuilder text = new();
    bool isInRow;

    /// <summary>Adds a text; null for an empty field.</summary>
    public CsvText Add(string? field)
    {
        Separate();
        if (string.IsNullOrEmpty(field)) return this;
        field = Plain(field);
        if (field.AsSpan().ContainsAny(",\"\r\n'")) text.Append('"').Append(field.Replace("\"", "\"\"", StringComparison.Ordinal)).Append('"');
        else text.Append(field);
        return this;
    }

    // A spreadsheet that separates by semicolons or tabs begins a cell behind each of them, quoted or not.
    static string Plain(string field)
    {
        var plain = new StringBuilder(field.Length + 1);
        for (var at = 0; at < field.Length; at++)
        {
            var begins = at == 0 || field[at - 1] is ';' or '\t';
            if (begins && field[at] is '=' or '+' or '-' or '@' or < ' ' or '＝' or '＋' or '－' or '＠') plain.Append('\'');
            plain.Append(field[at]);
        }
        return plain.ToString();
    }

    /// <summary>Adds a number; null for an empty field.</summary>
    public CsvText Add(double? number)
    {
        Separate();
        if (number is { } known) text.Append(CultureInfo.InvariantCulture, $"{known}");
        return this;
    }

    /// <summary>Adds empty fields.</summary>
    public CsvText Skip(int fields)
    {
        for (; fields > 0; fields--) Separate();
        return this;
    }

    /// <summary>Ends the row.</summary>
    public void EndRow()
    {
        text.Append("\r\n");
        isInRow = false;
    }

    /// <summary>The table in UTF-8.</summary>
    public byte[] ToUtf8()
    {
        var table = text.ToString();
        return Encoding.UTF8.GetBytes(Ascii.IsValid(table) ? table : '\uFEFF' + table);
    }

    void Separate()
    {
        if (isInRow) text.Append(',');
        isInRow = true;
    }
}

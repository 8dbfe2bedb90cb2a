using System.Collections.Immutable;
using System.Text;

namespace FlowCalc.ReferenceData;

/// <summary>Splits comma-separated text (RFC 4180) into records of fields.</summary>
internal static class CsvRecords
{
    /// <summary>All records, the header among them.</summary>
    /// <exception cref="InvalidDataException">A quote is out of place or never closed, a line is blank, or the last line has no end.</exception>
    public static List<ImmutableArray<string>> Split(string name, string text)
    {
        var records = new List<ImmutableArray<string>>();
        var fields = ImmutableArray.CreateBuilder<string>();
        var field = new StringBuilder();
        var at = 0;
        while (at < text.Length)
        {
            at = text[at] == '"' ? Quoted(text, at, field, Fault) : Plain(text, at, field, Fault);
            fields.Add(field.ToString());
            field.Clear();
            if (at == text.Length) throw Fault("the last line has no end");

            if (text[at] == ',' && at + 1 < text.Length && text[at + 1] != '\n') { at++; continue; }
            if (text[at] == ',') { fields.Add(""); at++; }
            if (at == text.Length || text[at] != '\n') throw Fault("text after a closing quote, or the last line has no end");
            if (fields is [""]) throw Fault("blank line");
            records.Add(fields.ToImmutable());
            fields.Clear();
            at++;
        }
        return records;

        InvalidDataException Fault(string what) => new($"{name}, record {records.Count + 1}: {what}.");
    }

    static int Plain(string text, int at, StringBuilder field, Func<string, InvalidDataException> fault)
    {
        for (; at < text.Length && text[at] is not (',' or '\n'); at++)
        {
            if (text[at] is '"' or '\r') throw fault("a quote or a carriage return inside plain text");
            field.Append(text[at]);
        }
        return at;
    }

    static int Quoted(string text, int at, StringBuilder field, Func<string, InvalidDataException> fault)
    {
        for (at++; at < text.Length; at++)
        {
            if (text[at] != '"') { field.Append(text[at]); continue; }
            if (at + 1 == text.Length || text[at + 1] != '"') return at + 1;
            field.Append('"');
            at++;
        }
        throw fault("a quote is never closed");
    }
}

using System.Collections.Immutable;
using System.Text;

namespace FlowCalc.ReferenceData;

/// <summary>
/// A table of comma-separated text (RFC 4180), read strictly: a header, at least one row, no blank or short line, no repeated column. The tables
/// are part of the library, so a broken one is a bug and throws.
/// </summary>
internal sealed class CsvTable
{
    static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    CsvTable(string name, ImmutableArray<string> columns, ImmutableArray<CsvRow> rows) =>
        (Name, Columns, Rows) = (name, columns, rows);

    /// <summary>Where the table comes from; used in messages.</summary>
    public string Name { get; }

    /// <summary>Column names in the order of the header.</summary>
    public ImmutableArray<string> Columns { get; }

    /// <summary>Rows in the order of the file, header left out.</summary>
    public ImmutableArray<CsvRow> Rows { get; }

    /// <summary>Reads an embedded table.</summary>
    /// <param name="path">Path relative to <c>reference-data</c>.</param>
    /// <exception cref="InvalidDataException">There is no such table, or it is malformed.</exception>
    public static CsvTable Embedded(string path) => Parse(path, StrictUtf8.GetString(EmbeddedFile.Read(path)));

    /// <summary>Reads a table from text.</summary>
    /// <exception cref="InvalidDataException">The text is not a strict table.</exception>
    public static CsvTable Parse(string name, string text)
    {
        var records = CsvRecords.Split(name, text);
        if (records.Count < 2) throw new InvalidDataException($"{name}: a table needs a header and at least one row.");

        var columns = records[0];
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var place = 0; place < columns.Length; place++)
            if (columns[place].Length == 0 || !places.TryAdd(columns[place], place))
                throw new InvalidDataException($"{name}: column {place + 1} has no name, or one that is taken ('{columns[place]}').");

        var rows = ImmutableArray.CreateBuilder<CsvRow>(records.Count - 1);
        foreach (var (index, fields) in records.Index().Skip(1))
        {
            if (fields.Length != columns.Length)
                throw new InvalidDataException($"{name}, record {index + 1}: {fields.Length} fields where the header has {columns.Length}.");
            rows.Add(new CsvRow($"{name}, record {index + 1}", places, fields));
        }
        return new CsvTable(name, columns, rows.MoveToImmutable());
    }
}

using System.Collections.Immutable;
using System.Globalization;

namespace FlowCalc.ReferenceData;

/// <summary>One row of a <see cref="CsvTable"/>, read by column name.</summary>
internal sealed class CsvRow(string place, IReadOnlyDictionary<string, int> columns, ImmutableArray<string> fields)
{
    const NumberStyles Invariant = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    /// <summary>The field as it stands.</summary>
    /// <exception cref="InvalidDataException">There is no such column.</exception>
    public string Text(string column) =>
        columns.TryGetValue(column, out var index) ? fields[index] : throw new InvalidDataException($"{place}: no column '{column}'.");

    /// <summary>The field, or null where it is empty.</summary>
    public string? OptionalText(string column) => Text(column) is { Length: > 0 } text ? text : null;

    /// <summary>The field as a finite number in the unit that the column names.</summary>
    /// <exception cref="InvalidDataException">The field is not a number.</exception>
    public double Number(string column) =>
        double.TryParse(Text(column), Invariant, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number)
            ? number
            : throw new InvalidDataException($"{place}, {column}: '{Text(column)}' is not a number.");

    /// <summary>The field as a number, or null where it is empty.</summary>
    public double? OptionalNumber(string column) => Text(column).Length == 0 ? null : Number(column);

    /// <summary>Keys into the table of sources, from the column <c>source</c>.</summary>
    public ImmutableArray<string> Sources => [.. Text("source").Split(';')];
}

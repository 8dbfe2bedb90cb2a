using System.Collections.Immutable;

namespace FlowCalc.Quantities;

/// <summary>The closed table of units: what is not in it is not read.</summary>
/// <remarks>
/// Spellings are case-sensitive and unambiguous within a kind; across kinds some repeat (<c>g</c> is a mass and an acceleration).
/// Factors come from UnitsNet; the exact ones among them (inch, pound, pound-force, US gallon) follow NIST SP 811.
/// </remarks>
public static class UnitTable
{
    static readonly ImmutableArray<UnitEntry>[] Rows;
    static readonly SpellingIndex[] Indexes;
    static readonly string[] Fitting;

    static UnitTable()
    {
        All = UnitRows.Build();
        var kinds = Enum.GetValues<QuantityKind>();
        Rows = [.. kinds.Select(kind => All.Where(entry => entry.Kind == kind).ToImmutableArray())];
        Indexes = [.. Rows.Select(rows => new SpellingIndex(rows))];
        Fitting = [.. Rows.Select(rows => string.Join(", ", rows.Select(entry => entry.Symbol)))];
    }

    /// <summary>Every row, grouped by kind in the order in which faults list the units.</summary>
    public static ImmutableArray<UnitEntry> All { get; }

    /// <summary>The rows of one kind.</summary>
    /// <param name="kind">What the units measure.</param>
    /// <returns>The kind's rows, in the table's order.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is no member of its enumeration.</exception>
    public static IEnumerable<UnitEntry> Of(QuantityKind kind) => Rows[Checked(kind)];

    /// <summary>The main spellings that fit a kind, for a message.</summary>
    /// <param name="kind">What the units measure.</param>
    /// <returns>Symbols in the table's order, such as <c>m, cm, mm, µm, in, ft</c>.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is no member of its enumeration.</exception>
    public static string FittingUnits(QuantityKind kind) => Fitting[Checked(kind)];

    /// <summary>The unit of this kind that the bytes spell, or null.</summary>
    internal static UnitSpelling? Find(QuantityKind kind, ReadOnlySpan<byte> utf8Unit) => Indexes[Checked(kind)].Find(utf8Unit);

    static int Checked(QuantityKind kind) => (uint)kind < (uint)Indexes.Length
        ? (int)kind
        : throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of quantity.");
}

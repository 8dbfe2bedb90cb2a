using System.Collections.Immutable;
using FlowCalc.ReferenceData;
using UnitsNet;

namespace FlowCalc.Stock;

/// <summary>The largest distance between the clips of a tube, by its outside diameter and material.</summary>
/// <remarks>
/// Source: MIL-H-8891A table II for steel from 1/4 in (second-hand); the rest from the supports of aircraft handbooks, from memory. Between rows in proportion. Below the first row
/// the distance falls with the diameter, above the last it grows no more: either is on the safe side of the table's trend.
/// </remarks>
public static class ClipSpacings
{
    /// <summary>What fitters use in cars and boats throughout, and the most for soft copper and plastic (common practice, no source).</summary>
    public static readonly Length Usual = Length.FromMillimeters(300);

    const string Aluminium = "aluminium", Steel = "steel";

    static readonly ImmutableArray<(double Outside, double Spacing)> OfAluminium, OfSteel;

    static ClipSpacings()
    {
        var rows = CsvTable.Embedded("stock/clip-spacings.csv").Rows;
        (OfAluminium, OfSteel) = (Column(rows, Aluminium), Column(rows, Steel));
    }

    /// <summary>The largest distance.</summary>
    /// <param name="material">Material of the tube; null where it is not known, which counts as the least of all.</param>
    /// <param name="outsideDiameter">Outside diameter, over 0.</param>
    /// <returns>The distance along the tube.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="outsideDiameter"/> is not over 0.</exception>
    public static Length Of(TubeMaterial? material, Length outsideDiameter)
    {
        var outside = outsideDiameter.Meters;
        if (!(outside > 0)) throw new ArgumentOutOfRangeException(nameof(outsideDiameter), outside, "Over 0.");
        var tabled = Interpolated(outside, Rows(material, outside));
        return Length.FromMeters(IsTabled(material) ? tabled : Math.Min(Usual.Meters, tabled));
    }

    /// <summary>Whether the table has rows of a material; others take those of aluminium, and <see cref="Usual"/> at most.</summary>
    /// <param name="material">Material of the tube; null where it is not known.</param>
    internal static bool IsTabled(TubeMaterial? material) => material?.Kind is Aluminium or Steel;

    /// <summary>The rows that an outside diameter lies between, m: nothing at nothing below the first, the last twice above it.</summary>
    /// <param name="material">Material of the tube; null where it is not known.</param>
    /// <param name="outside">Outside diameter, m, over 0.</param>
    internal static ((double Outside, double Spacing) Low, (double Outside, double Spacing) High) Rows(TubeMaterial? material, double outside)
    {
        var rows = material?.Kind == Steel ? OfSteel : OfAluminium;
        for (var row = 0; row < rows.Length; row++)
            if (outside <= rows[row].Outside) return (row > 0 ? rows[row - 1] : default, rows[row]);
        return (rows[^1], rows[^1]);
    }

    static double Interpolated(double outside, ((double Outside, double Spacing) Low, (double Outside, double Spacing) High) rows)
    {
        var (low, high) = rows;
        return low == high ? high.Spacing : low.Spacing + (high.Spacing - low.Spacing) * (outside - low.Outside) / (high.Outside - low.Outside);
    }

    static ImmutableArray<(double, double)> Column(ImmutableArray<CsvRow> rows, string material) =>
        [.. rows.Where(row => row.Text("material") == material).Select(row => (row.Number("outside_diameter_mm") / 1e3, row.Number("spacing_mm") / 1e3))];
}

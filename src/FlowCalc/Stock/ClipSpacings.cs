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
        return Length.FromMeters(material?.Kind switch
        {
            Aluminium => Interpolated(OfAluminium, outside),
            Steel => Interpolated(OfSteel, outside),
            _ => Math.Min(Usual.Meters, Interpolated(OfAluminium, outside)),
        });
    }

    static double Interpolated(ImmutableArray<(double Outside, double Spacing)> rows, double outside)
    {
        if (outside <= rows[0].Outside) return rows[0].Spacing * outside / rows[0].Outside;
        for (var row = 1; row < rows.Length; row++)
        {
            var (low, high) = (rows[row - 1], rows[row]);
            if (outside <= high.Outside) return low.Spacing + (high.Spacing - low.Spacing) * (outside - low.Outside) / (high.Outside - low.Outside);
        }
        return rows[^1].Spacing;
    }

    static ImmutableArray<(double, double)> Column(ImmutableArray<CsvRow> rows, string material) =>
        [.. rows.Where(row => row.Text("material") == material).Select(row => (row.Number("outside_diameter_mm") / 1e3, row.Number("spacing_mm") / 1e3))];
}

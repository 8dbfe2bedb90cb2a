using System.Collections.Immutable;
using FlowCalc.ReferenceData;
using UnitsNet;

namespace FlowCalc.Stock;

/// <summary>A size of copper wire with its greatest resistance.</summary>
/// <param name="Kind">What standard it is of: <c>flexible</c> (IEC 60228 class 5) or <c>road-vehicle</c> (ISO 6722-1).</param>
/// <param name="Area">Nominal cross-section.</param>
/// <param name="OhmsPerMetre">Greatest resistance at 20 °C of plain copper, Ω/m.</param>
/// <param name="TinnedOhmsPerMetre">The same of tinned copper, Ω/m; null where the table has none.</param>
/// <param name="Sources">Keys into <see cref="SourceCatalogue"/>.</param>
public sealed record WireSize(string Kind, Area Area, double OhmsPerMetre, double? TinnedOhmsPerMetre, ImmutableArray<string> Sources)
{
    /// <summary>All sizes: by kind, then rising.</summary>
    public static ImmutableArray<WireSize> All { get; } = [.. CsvTable.Embedded("stock/wires.csv").Rows.Select(Read)];

    /// <summary>The size of a kind that has a cross-section.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="squareMetres">Cross-section, m².</param>
    /// <returns>The size; null where the table has none of that cross-section.</returns>
    public static WireSize? Find(string kind, double squareMetres)
    {
        foreach (var size in All)
            if (size.Kind == kind && Math.Abs(size.Area.SquareMeters / squareMetres - 1) < 1e-6) return size;
        return null;
    }

    static WireSize Read(CsvRow row) => new(
        row.Text("kind"), Area.FromSquareMillimeters(row.Number("area_mm2")), row.Number("plain_ohm_km") / 1e3, row.OptionalNumber("tinned_ohm_km") / 1e3, row.Sources);
}

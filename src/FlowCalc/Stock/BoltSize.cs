using System.Collections.Immutable;
using FlowCalc.ReferenceData;
using UnitsNet;

namespace FlowCalc.Stock;

/// <summary>A size of bolt with coarse metric thread.</summary>
/// <param name="Id">Its name, such as <c>M6</c>.</param>
/// <param name="Diameter">Nominal diameter.</param>
/// <param name="Pitch">Pitch of the thread.</param>
/// <param name="StressArea">Nominal stress area.</param>
/// <param name="Head">Width of the hexagon head across flats.</param>
/// <param name="Hole">Diameter of the clearance hole, medium fit.</param>
/// <param name="Washer">Outside diameter of the washer of the normal series.</param>
/// <param name="Sources">Keys into <see cref="SourceCatalogue"/>.</param>
public sealed record BoltSize(string Id, Length Diameter, Length Pitch, Area StressArea, Length Head, Length Hole, Length Washer, ImmutableArray<string> Sources)
{
    // Least width across corners of a hexagon head over its width across flats (ISO 4017, from memory).
    const double CornersOverFlats = 1.13;

    /// <summary>Mean of the widths of the head across flats and across corners, which EN 1993-1-8 takes for the head against the sheet.</summary>
    public Length MeanHead => Head * ((1 + CornersOverFlats) / 2);

    /// <summary>Diameter of a round bar with the stress area.</summary>
    public Length StressDiameter => Length.FromMeters(Math.Sqrt(4 / Math.PI * StressArea.SquareMeters));

    internal static BoltSize Read(CsvRow row) => new(
        row.Text("id"), Millimetres(row, "diameter_mm"), Millimetres(row, "pitch_mm"), Area.FromSquareMillimeters(row.Number("stress_area_mm2")),
        Millimetres(row, "head_mm"), Millimetres(row, "hole_mm"), Millimetres(row, "washer_mm"), row.Sources);

    static Length Millimetres(CsvRow row, string column) => Length.FromMillimeters(row.Number(column));
}

using System.Collections.Frozen;
using System.Collections.Immutable;
using FlowCalc.ReferenceData;
using UnitsNet;

namespace FlowCalc.Stock;

/// <summary>Small tube sizes as they are commonly sold, 3 to 15 mm outside.</summary>
public static class TubeCatalogue
{
    static readonly FrozenDictionary<string, CatalogueTube> ById;

    static TubeCatalogue()
    {
        All = [.. CsvTable.Embedded("stock/tubes.csv").Rows.Select(Read)];
        ById = All.ToFrozenDictionary(tube => tube.Id, StringComparer.Ordinal);
    }

    /// <summary>All tubes: by material, then by outside diameter, then by wall.</summary>
    public static ImmutableArray<CatalogueTube> All { get; }

    /// <summary>The tube of an id.</summary>
    /// <param name="id">Id; case counts.</param>
    /// <returns>The tube, or null where none has that id.</returns>
    public static CatalogueTube? Find(string id) => ById.GetValueOrDefault(id);

    static CatalogueTube Read(CsvRow row) => new(
        row.Text("id"), row.Text("material"), row.Text("standard"), Length.FromMillimeters(row.Number("outside_diameter_mm")),
        Length.FromMillimeters(row.Number("wall_mm")), Length.FromMillimeters(row.Number("bore_mm")), Length.FromMicrometers(row.Number("roughness_um")),
        Length.FromMicrometers(row.Number("roughness_low_um")), Length.FromMicrometers(row.Number("roughness_high_um")),
        Length.FromMillimeters(row.Number("minimum_bend_radius_mm")),
        row.OptionalNumber("working_pressure_bar") is { } bar ? Pressure.FromBars(bar) : null, row.Text("note"), row.Sources);
}

using System.Collections.Immutable;
using FlowCalc.ReferenceData;
using UnitsNet;

namespace FlowCalc.Stock;

/// <summary>A material of tube that a free text may name, with what the bench needs to know of it.</summary>
/// <param name="Word">Part of a text that names it.</param>
/// <param name="Kind">How tube of it is clipped: <c>aluminium</c>, <c>copper</c>, <c>steel</c> or <c>plastic</c>.</param>
/// <param name="Density">Density near 20 °C.</param>
/// <param name="Expansion">Growth in length, 1/K.</param>
/// <param name="Highest">Temperature above which it softens; null where none is kept.</param>
/// <param name="Note">What to know before relying on the figures.</param>
/// <param name="Sources">Keys into <see cref="SourceCatalogue"/>.</param>
public sealed record TubeMaterial(string Word, string Kind, Density Density, double Expansion, Temperature? Highest, string Note, ImmutableArray<string> Sources)
{
    // A skin softens before its metal.
    const string Skin = "plastic coated";
    static readonly Temperature SkinHighest = Temperature.FromDegreesCelsius(70);

    /// <summary>All materials; one whose word holds another's comes first.</summary>
    public static ImmutableArray<TubeMaterial> All { get; } = [.. CsvTable.Embedded("stock/materials.csv").Rows.Select(Read)];

    /// <summary>The material that a text names.</summary>
    /// <param name="text">Free text such as <c>aluminium EN AW-3003, plastic coated</c>; null for none.</param>
    /// <returns>The first of <see cref="All"/> whose word is in it, with a plastic skin where the text says so; null where none is.</returns>
    public static TubeMaterial? Of(string? text)
    {
        if (text is null) return null;
        foreach (var material in All)
            if (text.Contains(material.Word, StringComparison.OrdinalIgnoreCase))
                return text.Contains(Skin, StringComparison.OrdinalIgnoreCase) ? material with { Highest = SkinHighest } : material;
        return null;
    }

    static TubeMaterial Read(CsvRow row) => new(
        row.Text("material"), row.Text("kind"), Density.FromKilogramsPerCubicMeter(row.Number("density_kg_m3")), row.Number("expansion_um_m_k") * 1e-6,
        row.OptionalNumber("highest_c") is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null, row.Text("note"), row.Sources);
}

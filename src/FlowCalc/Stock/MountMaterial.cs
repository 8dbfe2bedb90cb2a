using System.Collections.Immutable;
using FlowCalc.ReferenceData;
using UnitsNet;

namespace FlowCalc.Stock;

/// <summary>A material that brackets, panels and straps are made of.</summary>
/// <param name="Id">Its name; null for one that a document describes.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Tensile">Least tensile strength; null where not known.</param>
/// <param name="Yield">Least yield or 0.2 % proof stress; null where not known.</param>
/// <param name="Sources">Keys into <see cref="SourceCatalogue"/>; empty for one that a document describes.</param>
public sealed record MountMaterial(string? Id, MountMaterialKind Kind, Pressure? Tensile, Pressure? Yield, ImmutableArray<string> Sources)
{
    /// <summary>The materials of the catalogue.</summary>
    public static ImmutableArray<MountMaterial> All { get; } = [.. CsvTable.Embedded("mounts/materials.csv").Rows.Select(Read)];

    /// <summary>Whether it is a metal.</summary>
    public bool IsMetal => Kind != MountMaterialKind.Other;

    /// <summary>The material of a name.</summary>
    /// <param name="id">Name; case counts.</param>
    /// <returns>The material, or null where none has that name.</returns>
    public static MountMaterial? Find(string id) => All.FirstOrDefault(material => material.Id == id);

    static MountMaterial Read(CsvRow row) => new(
        row.Text("id"), Enum.Parse<MountMaterialKind>(row.Text("kind"), ignoreCase: true), Megapascals(row, "tensile_mpa"), Megapascals(row, "yield_mpa"), row.Sources);

    static Pressure? Megapascals(CsvRow row, string column) => row.OptionalNumber(column) is { } stress ? Pressure.FromMegapascals(stress) : null;
}

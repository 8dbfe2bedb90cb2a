using System.Collections.Frozen;
using System.Collections.Immutable;
using FlowCalc.ReferenceData;
using UnitsNet;

namespace FlowCalc.Stock;

/// <summary>Fittings whose loss has a source, and those whose loss hangs on a bore that the user must give. Tees are points of a layout, not fittings.</summary>
public static class FittingCatalogue
{
    static readonly FrozenDictionary<string, CatalogueFitting> ById;

    static FittingCatalogue()
    {
        All = [.. CsvTable.Embedded("stock/fittings.csv").Rows.Select(Read)];
        ById = All.ToFrozenDictionary(fitting => fitting.Id, StringComparer.Ordinal);
    }

    /// <summary>All fittings, in ordinal order of their ids.</summary>
    public static ImmutableArray<CatalogueFitting> All { get; }

    /// <summary>The fitting of an id.</summary>
    /// <param name="id">Id; case counts.</param>
    /// <returns>The fitting, or null where none has that id.</returns>
    public static CatalogueFitting? Find(string id) => ById.GetValueOrDefault(id);

    static CatalogueFitting Read(CsvRow row) => new(
        row.Text("id"), row.Text("kind"), Millimetres(row, "bore_mm"), Millimetres(row, "length_mm"), row.OptionalNumber("loss_coefficient"),
        row.OptionalNumber("kv_m3_h"), Millimetres(row, "insertion_mm"), row.Text("note"), row.Sources);

    static Length? Millimetres(CsvRow row, string column) =>
        row.OptionalNumber(column) is { } millimetres ? Length.FromMillimeters(millimetres) : null;
}

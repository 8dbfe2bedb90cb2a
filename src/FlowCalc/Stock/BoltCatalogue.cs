using System.Collections.Frozen;
using System.Collections.Immutable;
using FlowCalc.ReferenceData;
using UnitsNet;

namespace FlowCalc.Stock;

/// <summary>Sizes and property classes of bolts, and the loads that they are proved with.</summary>
public static class BoltCatalogue
{
    static readonly FrozenDictionary<(string Size, string Class), (Force Proof, Force Tensile)> Loads = CsvTable.Embedded("mounts/bolt-loads.csv").Rows.ToFrozenDictionary(
        row => (row.Text("size"), row.Text("property_class")), row => (Force.FromNewtons(row.Number("proof_n")), Force.FromNewtons(row.Number("tensile_n"))));

    /// <summary>All sizes, the thinnest first.</summary>
    public static ImmutableArray<BoltSize> Sizes { get; } = [.. CsvTable.Embedded("mounts/bolt-sizes.csv").Rows.Select(BoltSize.Read)];

    /// <summary>All classes, the weakest first.</summary>
    public static ImmutableArray<BoltClass> Classes { get; } = [.. CsvTable.Embedded("mounts/bolt-classes.csv").Rows.Select(BoltClass.Read)];

    /// <summary>The class of plain steel that is taken where none is known: the weakest.</summary>
    public static BoltClass Weakest => Classes[0];

    /// <summary>The size of a name.</summary>
    /// <param name="id">Name; case counts.</param>
    /// <returns>The size, or null where none has that name.</returns>
    public static BoltSize? FindSize(string id) => Sizes.FirstOrDefault(size => size.Id == id);

    /// <summary>The class of a mark.</summary>
    /// <param name="id">Mark; case counts.</param>
    /// <returns>The class, or null where none has that mark.</returns>
    public static BoltClass? FindClass(string id) => Classes.FirstOrDefault(one => one.Id == id);

    /// <summary>The load under which a bolt may not stay longer, and the least at which it may break.</summary>
    /// <param name="size">A size of the catalogue.</param>
    /// <param name="strength">A class of the catalogue.</param>
    /// <returns>Both loads, along the bolt.</returns>
    /// <exception cref="KeyNotFoundException">One of them is not of the catalogue.</exception>
    /// <remarks>Source: ISO 898-1, coarse thread, seen second-hand; of stainless classes area times stress (ISO 3506-1, from memory).</remarks>
    public static (Force Proof, Force Tensile) LoadsOf(BoltSize size, BoltClass strength)
    {
        ArgumentNullException.ThrowIfNull(size);
        ArgumentNullException.ThrowIfNull(strength);
        return Loads[(size.Id, strength.Id)];
    }
}

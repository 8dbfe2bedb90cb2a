using System.Collections.Immutable;
using FlowCalc.ReferenceData;
using UnitsNet;

namespace FlowCalc.Stock;

/// <summary>A property class of bolts.</summary>
/// <param name="Id">Its mark, such as <c>8.8</c> or <c>A2-70</c>.</param>
/// <param name="IsStainless">Whether it is one of stainless steel.</param>
/// <param name="Tensile">Least tensile strength.</param>
/// <param name="Yield">Least yield or 0.2 % proof stress.</param>
/// <param name="Proof">Stress under the proof load.</param>
/// <param name="ShearCoefficient">Part of the tensile strength that counts in shear with the thread in the shear plane, dimensionless.</param>
/// <param name="Note">What to know before relying on it.</param>
/// <param name="Sources">Keys into <see cref="SourceCatalogue"/>.</param>
public sealed record BoltClass(
    string Id, bool IsStainless, Pressure Tensile, Pressure Yield, Pressure Proof, double ShearCoefficient, string Note, ImmutableArray<string> Sources)
{
    internal static BoltClass Read(CsvRow row) => new(
        row.Text("id"), row.Text("kind") == "stainless", Megapascals(row, "tensile_mpa"), Megapascals(row, "yield_mpa"), Megapascals(row, "proof_mpa"),
        row.Number("shear_coefficient"), row.Text("note"), row.Sources);

    static Pressure Megapascals(CsvRow row, string column) => Pressure.FromMegapascals(row.Number(column));
}

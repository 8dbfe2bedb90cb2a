using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Stock;

/// <summary>A fitting of the catalogue. What a field leaves null is not known here and belongs to the make: it must be given.</summary>
/// <param name="Id">Id, as a layout document may name it.</param>
/// <param name="Kind">Kind, as a layout document names it.</param>
/// <param name="Bore">Least bore, or null where the real one must be given.</param>
/// <param name="Length">Length of that bore, or null where it must be given.</param>
/// <param name="LossCoefficient">Loss coefficient on the velocity head of the tube, dimensionless, or null.</param>
/// <param name="Kv">Flow coefficient Kv, m³/h at 1 bar, or null.</param>
/// <param name="Insertion">How deep the tube goes in, or null where it must be given.</param>
/// <param name="Note">What to know before relying on the figures.</param>
/// <param name="Sources">Keys into <see cref="ReferenceData.SourceCatalogue"/>.</param>
public sealed record CatalogueFitting(
    string Id,
    string Kind,
    Length? Bore,
    Length? Length,
    double? LossCoefficient,
    double? Kv,
    Length? Insertion,
    string Note,
    ImmutableArray<string> Sources);

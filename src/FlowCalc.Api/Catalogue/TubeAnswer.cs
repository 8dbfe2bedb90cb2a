using System.Collections.Immutable;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Catalogue;

/// <summary>A size of small tube as it is commonly sold.</summary>
/// <param name="Id">Id, as <c>tube</c> of a run may name it.</param>
/// <param name="Material">Material, in words.</param>
/// <param name="Standard">Standards that list such sizes, or whose sizes they are.</param>
/// <param name="OutsideDiameter">Outside diameter of the bare tube.</param>
/// <param name="Wall">Nominal wall.</param>
/// <param name="Bore">Nominal bore: outside diameter less two walls.</param>
/// <param name="Roughness">Wall roughness to calculate with.</param>
/// <param name="RoughnessLow">Lower end of what is plausible.</param>
/// <param name="RoughnessHigh">Upper end of what is plausible.</param>
/// <param name="MinimumBendRadius">Least radius of a bend, to the centre line.</param>
/// <param name="WorkingPressure">Highest gauge pressure; null where the table has none.</param>
/// <param name="Note">What to know before relying on the figures.</param>
/// <param name="Sources">Keys of its sources.</param>
public sealed record TubeAnswer(
    string Id, string Material, string Standard, Quantity OutsideDiameter, Quantity Wall, Quantity Bore, Quantity Roughness, Quantity RoughnessLow, Quantity RoughnessHigh,
    Quantity MinimumBendRadius, Quantity? WorkingPressure, string Note, ImmutableArray<string> Sources);

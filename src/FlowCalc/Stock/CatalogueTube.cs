using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Stock;

/// <summary>A size of small tube as it is commonly sold.</summary>
/// <param name="Id">Id, as a layout document may name it.</param>
/// <param name="Material">Material, in words.</param>
/// <param name="Standard">Standards that list such sizes, or whose sizes they are.</param>
/// <param name="OutsideDiameter">Outside diameter of the bare tube.</param>
/// <param name="Wall">Nominal wall.</param>
/// <param name="Bore">Nominal bore: outside diameter less two walls. The loss goes as about the fifth power of it, so measure where it matters.</param>
/// <param name="Roughness">Wall roughness to calculate with.</param>
/// <param name="RoughnessLow">Lower end of what is plausible.</param>
/// <param name="RoughnessHigh">Upper end of what is plausible.</param>
/// <param name="MinimumBendRadius">Least radius of a bend, to the centre line.</param>
/// <param name="WorkingPressure">Highest gauge pressure, or null where the table has none: it hangs on temper, temperature and code.</param>
/// <param name="Note">What to know before relying on the figures.</param>
/// <param name="Sources">Keys into <see cref="ReferenceData.SourceCatalogue"/>.</param>
public sealed record CatalogueTube(
    string Id,
    string Material,
    string Standard,
    Length OutsideDiameter,
    Length Wall,
    Length Bore,
    Length Roughness,
    Length RoughnessLow,
    Length RoughnessHigh,
    Length MinimumBendRadius,
    Pressure? WorkingPressure,
    string Note,
    ImmutableArray<string> Sources);

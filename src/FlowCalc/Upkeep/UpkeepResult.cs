using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Upkeep;

/// <summary>Dates, weight and gauge of a bottle on one day.</summary>
/// <param name="Today">The day that is asked for.</param>
/// <param name="Dates">What falls due: the usual rules, then the document's own.</param>
/// <param name="Expected">What a sound bottle's gauge shows at the temperature that is asked for; null where none is, or where the supply is no bottle.</param>
/// <param name="Lowest">Absolute pressure below which too much is lost at that temperature; null where nothing is expected.</param>
/// <param name="Gauge">What the reading in the document says; null where there is none.</param>
/// <param name="Weight">What the weighing in the document says; null where there is none.</param>
/// <param name="Assumptions">What the document left open, and what was taken.</param>
public sealed record UpkeepResult(
    DateOnly Today, ImmutableArray<DueDate> Dates, RestPressure? Expected, Pressure? Lowest, GaugeCheck? Gauge, WeightCheck? Weight, ImmutableArray<Assumption> Assumptions)
{
    /// <summary>What falls due first; null where nothing has a date.</summary>
    public DueDate? Next => Dates.Where(date => date.Due is not null).MinBy(date => date.Due);
}

using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>What a nozzle gave.</summary>
/// <param name="Point">Index of the nozzle in <see cref="Layouts.Layout.Points"/>.</param>
/// <param name="Arrival">When liquid came to it; null where it never did.</param>
/// <param name="Mass">Agent out of it.</param>
/// <param name="Share">Part of all that left the nozzles, 0 to 1; 0 where nothing did.</param>
/// <param name="WantedShare">Part that it should give, 0 to 1.</param>
/// <param name="Time95">When 95 % of its own mass was out; null where it gave nothing.</param>
/// <param name="LiquidEnd">When gas came to it; null where it never did.</param>
/// <param name="PeakMassFlow">Greatest flow out of it.</param>
/// <param name="LeastPressure">Least absolute pressure at it once every nozzle had liquid and while the dip tube drew it; null where there was no such time.</param>
/// <param name="GreatestPressure">Greatest absolute pressure at it while it gave liquid; null where it gave none.</param>
/// <param name="Surge">Bound of the pressure rise when the liquid met it (Joukowsky); null where it gave none.</param>
public sealed record NozzleDischarge(
    int Point, Duration? Arrival, Mass Mass, double Share, double WantedShare, Duration? Time95, Duration? LiquidEnd,
    MassFlow PeakMassFlow, Pressure? LeastPressure, Pressure? GreatestPressure, Pressure? Surge)
{
    /// <summary>Share over wanted share, less 1; null where nothing is wanted.</summary>
    public double? Deviation => WantedShare > 0 ? Share / WantedShare - 1 : null;
}

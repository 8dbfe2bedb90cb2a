using UnitsNet;

namespace FlowCalc.Flows;

/// <summary>What a nozzle gets.</summary>
/// <param name="Point">Index of the nozzle in <see cref="Layouts.Layout.Points"/>.</param>
/// <param name="Pressure">Absolute total pressure at the nozzle.</param>
/// <param name="MassFlow">Mass flow, 0 where height alone stops it.</param>
/// <param name="VolumeFlow">The same as a volume.</param>
/// <param name="Share">Part of the whole flow, 0 to 1.</param>
/// <param name="WantedShare">Part that it should get, 0 to 1.</param>
/// <param name="Losses">The drop from the supply or the bottle to the nozzle, by kind.</param>
public sealed record NozzleFlow(int Point, Pressure Pressure, MassFlow MassFlow, VolumeFlow VolumeFlow, double Share, double WantedShare, LossBreakdown Losses)
{
    /// <summary>Share over wanted share, less 1; null where nothing is wanted.</summary>
    public double? Deviation => WantedShare > 0 ? Share / WantedShare - 1 : null;
}

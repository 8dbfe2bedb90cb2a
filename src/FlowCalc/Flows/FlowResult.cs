using System.Collections.Immutable;
using FlowCalc.Networks;
using UnitsNet;

namespace FlowCalc.Flows;

/// <summary>The steady flow of a layout. Where <see cref="Report"/> has not converged the lists are empty.</summary>
/// <param name="Report">How the solve ended.</param>
/// <param name="Supply">What leaves the supply; null without convergence.</param>
/// <param name="Nozzles">Every nozzle, in the order of <see cref="Layouts.Layout.Points"/>.</param>
/// <param name="Runs">One entry a run, in the order of <see cref="Layouts.Layout.Runs"/>.</param>
/// <param name="PointPressures">Absolute total pressure at each point, in the order of <see cref="Layouts.Layout.Points"/>: at the end of the run that feeds it, before its own loss.</param>
/// <param name="Zones">One entry a zone, in the order of <see cref="Layouts.Layout.Zones"/>.</param>
/// <param name="Assumptions">The layout's assumptions, and those of the solve.</param>
public sealed record FlowResult(
    SolveReport Report,
    SupplyFlow? Supply,
    ImmutableArray<NozzleFlow> Nozzles,
    ImmutableArray<RunFlow> Runs,
    ImmutableArray<Pressure> PointPressures,
    ImmutableArray<ZoneShare> Zones,
    ImmutableArray<Assumption> Assumptions)
{
    /// <summary>How far the uncertain choices of the model move it; null where none is open, as for a liquid.</summary>
    public FlowBand? Band { get; init; }

    /// <summary>The solved line of a liquid; null for others, and without convergence.</summary>
    internal SolvedLiquid? Liquid { get; init; }

    /// <summary>The solved line of a gas or an agent that boils; null for others, and without convergence.</summary>
    internal SolvedExpanding? Expanding { get; init; }
}

using System.Runtime.InteropServices;
using FlowCalc.Agents;
using FlowCalc.Layouts;
using FlowCalc.Losses;
using FlowCalc.Networks;
using UnitsNet;

namespace FlowCalc.Flows;

/// <summary>Turns the solver's numbers for a gas or a liquefied gas into the answer, in the document's order.</summary>
/// <remarks>A run's drop of total pressure is booked by kind in the proportion of what each takes from Ψ = ∫ρ dp/ρ0, since losses grow along the way as the density falls.</remarks>
internal static class ExpandingFlowAnswer
{
    /// <summary>The answer of a solve that converged.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="solved">The solution.</param>
    /// <param name="report">How the solve ended.</param>
    /// <param name="reservoir">Absolute pressure in the bottle or at the held supply, Pa.</param>
    /// <param name="cancellationToken">Asked now and then.</param>
    public static FlowResult Of(Layout layout, SolvedExpanding solved, SolveReport report, double reservoir, CancellationToken cancellationToken)
    {
        var (compiled, state, table) = solved;
        var (network, flow) = (compiled.Network, state.Steady.Flow);
        var parts = LossLedger.Book(compiled, flow, table.ReferenceDensity, run => state.Viscosity[run], cancellationToken);
        var total = flow[0];
        var wanted = WantedShares.Of(layout);
        var pressures = new Pressure[layout.Points.Length];
        var runs = new RunFlow[layout.Runs.Length];
        var nozzles = new NozzleFlow?[layout.Points.Length];
        var shares = new double[layout.Points.Length];
        for (var j = 0; j < parts.Length; j++)
        {
            if (j % 4096 == 0) cancellationToken.ThrowIfCancellationRequested();
            var pressure = Math.Exp(state.Log[j]);
            var above = network.Parent[j] < 0 ? reservoir : Math.Exp(state.Log[network.Parent[j]]);
            parts[j] = Scaled(parts[j], above - pressure, network.Rise[j] * HydrostaticRise.StandardGravity * MeanDensity(table, state, j), isOutlet: j == 0);
            var point = compiled.Points[j];
            pressures[point] = Pressure.FromPascals(pressure);
            if (j > 0)
            {
                runs[compiled.Runs[j]] = Run(state, j, table, above - parts[j].Tees - parts[j].BoreChanges, pressure, parts[j]);
                parts[j] = parts[network.Parent[j]] + parts[j];
            }
            if (layout.Points[point] is not Nozzle) continue;
            var own = Math.Max(flow[j], 0);
            shares[point] = total > 0 ? own / total : 0;
            nozzles[point] = new(point, Pressure.FromPascals(pressure), MassFlow.FromKilogramsPerSecond(own),
                VolumeFlow.FromCubicMetersPerSecond(own / table.At(state.Log[j]).Density), shares[point], wanted[point], parts[j].ToBreakdown());
        }
        var supply = new SupplyFlow(Pressure.FromPascals(reservoir), pressures[compiled.Points[0]], MassFlow.FromKilogramsPerSecond(total),
            VolumeFlow.FromCubicMetersPerSecond(total / table.At(state.Log[0]).Density));
        return new(
            report, supply, [.. nozzles.OfType<NozzleFlow>()], ImmutableCollectionsMarshal.AsImmutableArray(runs), ImmutableCollectionsMarshal.AsImmutableArray(pressures),
            ZoneShare.Of(layout, shares, wanted), FlowAssumptions.Of(layout))
        { Expanding = solved };
    }

    static double MeanDensity(ExpansionTable table, CompressibleState state, int run) => 0.5 * (table.At(state.StartLog[run]).Density + table.At(state.EndLog[run]).Density);

    static LossParts Scaled(in LossParts parts, double drop, double rise, bool isOutlet)
    {
        var losses = parts.Total - parts.Rise;
        if (!(losses > 0)) return isOutlet ? new() { Outlet = drop - rise, Rise = rise } : new() { Tube = drop - rise, Rise = rise };
        return parts.Times((drop - rise) / losses) with { Rise = rise };
    }

    static RunFlow Run(CompressibleState state, int j, ExpansionTable table, double pressureIn, double pressureOut, in LossParts parts)
    {
        var flow = state.Steady.Flow[j];
        var reynolds = flow * state.Network.Tubes.ReynoldsPerFlow[j] / state.Viscosity[j];
        // The greatest, at the run's end, where the density is the least.
        var velocity = flow / (state.Area[j] * table.At(state.EndLog[j]).Density);
        return new(
            MassFlow.FromKilogramsPerSecond(flow), Speed.FromMetersPerSecond(velocity), reynolds, DarcyFriction.Regime(Math.Abs(reynolds)),
            Pressure.FromPascals(pressureIn), Pressure.FromPascals(pressureOut), parts.ToBreakdown())
        { IsChoked = state.IsChoked[j] };
    }
}

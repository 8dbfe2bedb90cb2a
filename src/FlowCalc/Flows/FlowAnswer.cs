using System.Collections.Immutable;
using System.Runtime.InteropServices;
using FlowCalc.Layouts;
using FlowCalc.Losses;
using FlowCalc.Networks;
using UnitsNet;

namespace FlowCalc.Flows;

/// <summary>Turns the solver's numbers into the answer, in the document's order.</summary>
internal static class FlowAnswer
{
    /// <summary>An answer that says why there is none.</summary>
    /// <param name="report">The report.</param>
    /// <param name="layout">The layout.</param>
    public static FlowResult Failed(SolveReport report, Layout layout) => new(report, null, [], [], [], [], FlowAssumptions.Of(layout));

    /// <summary>The answer of a solve that converged.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="solved">The solution.</param>
    /// <param name="report">How the solve ended.</param>
    /// <param name="cancellationToken">Asked now and then.</param>
    public static FlowResult Of(Layout layout, SolvedLiquid solved, SolveReport report, CancellationToken cancellationToken)
    {
        var (compiled, state, path, reservoir, throttled) = solved;
        var (network, flow) = (compiled.Network, state.Flow);
        var parts = LossLedger.Book(compiled, flow, path.ReferenceDensity, _ => path.Viscosity, cancellationToken);
        parts[0] = parts[0] with { Outlet = parts[0].Outlet + throttled };

        var total = flow[0];
        var wanted = WantedShares.Of(layout);
        var pressures = new Pressure[layout.Points.Length];
        var runs = new RunFlow[layout.Runs.Length];
        var nozzles = new NozzleFlow?[layout.Points.Length];
        var shares = new double[layout.Points.Length];
        var nozzleCount = 0;
        double worst = report.PressureResidual;
        for (var j = 0; j < parts.Length; j++)
        {
            if (j % 4096 == 0) cancellationToken.ThrowIfCancellationRequested();
            // The solver's own figure: behind a long way the reservoir's pressure less all losses would be rounding.
            var pressure = path.Pressure(state.Potential[j]);
            pressures[compiled.Points[j]] = Pressure.FromPascals(pressure);
            if (j > 0)
            {
                var above = path.Pressure(state.Potential[network.Parent[j]]);
                runs[compiled.Runs[j]] = Run(network.Tubes, j, flow[j], path, above - parts[j].Tees - parts[j].BoreChanges, pressure, parts[j]);
                // From here on the losses from the supply, in the same place.
                parts[j] = parts[network.Parent[j]] + parts[j];
            }
            worst = Math.Max(worst, Math.Abs(reservoir - parts[j].Total - pressure));
            if (layout.Points[compiled.Points[j]] is not Nozzle) continue;
            var point = compiled.Points[j];
            nozzleCount++;
            shares[point] = total > 0 ? flow[j] / total : 0;
            nozzles[point] = new(point, Pressure.FromPascals(pressure), MassFlow.FromKilogramsPerSecond(flow[j]),
                VolumeFlow.FromCubicMetersPerSecond(flow[j] / path.ReferenceDensity), shares[point], wanted[point], parts[j].ToBreakdown());
        }

        var supply = new SupplyFlow(Pressure.FromPascals(reservoir), pressures[compiled.Points[0]], MassFlow.FromKilogramsPerSecond(total),
            VolumeFlow.FromCubicMetersPerSecond(total / path.ReferenceDensity));
        var inOrder = InOrder(nozzles, nozzleCount);
        return new(
            report with { PressureResidual = worst },
            supply,
            inOrder,
            ImmutableCollectionsMarshal.AsImmutableArray(runs),
            ImmutableCollectionsMarshal.AsImmutableArray(pressures),
            ZoneShare.Of(layout, shares, wanted),
            FlowAssumptions.Of(layout))
        { Liquid = solved };
    }

    static ImmutableArray<NozzleFlow> InOrder(NozzleFlow?[] byPoint, int count)
    {
        var nozzles = new NozzleFlow[count];
        var next = 0;
        foreach (var nozzle in byPoint)
            if (nozzle is not null) nozzles[next++] = nozzle;
        return ImmutableCollectionsMarshal.AsImmutableArray(nozzles);
    }

    static RunFlow Run(FrictionSegments tubes, int j, double flow, LiquidPath path, double pressureIn, double pressureOut, in LossParts parts)
    {
        // Re = 4 m / (π D μ), so that the bore is 4 / (π · Re per flow).
        var bore = 4 / (Math.PI * tubes.ReynoldsPerFlow[j]);
        var reynolds = flow * tubes.ReynoldsPerFlow[j] / path.Viscosity;
        return new(
            MassFlow.FromKilogramsPerSecond(flow),
            Speed.FromMetersPerSecond(flow / (path.ReferenceDensity * Math.PI / 4 * bore * bore)),
            reynolds,
            DarcyFriction.Regime(Math.Abs(reynolds)),
            Pressure.FromPascals(pressureIn),
            Pressure.FromPascals(pressureOut),
            parts.ToBreakdown());
    }
}

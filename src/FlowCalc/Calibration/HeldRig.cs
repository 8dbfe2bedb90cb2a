using System.Collections.Immutable;
using FlowCalc.Bottles;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Networks;

namespace FlowCalc.Calibration;

/// <summary>A test at a supply that is held at a pressure: the steady flow of its liquid.</summary>
sealed class HeldRig : ITestRig
{
    readonly Measured measured;
    readonly CancellationToken cancellation;
    readonly LiquidPath path;
    readonly double ambient, held;
    readonly LayoutNetwork drawn;
    readonly SteadyState drawnState;
    readonly int[] nodes;

    /// <summary>Solves the layout as drawn.</summary>
    /// <exception cref="TestNotSolvedException">It has no flow.</exception>
    public HeldRig(Layout layout, Measured measured, CancellationToken cancellationToken)
    {
        (this.measured, cancellation) = (measured, cancellationToken);
        var temperature = measured.Temperature.Kelvins;
        ambient = layout.AmbientPressure.Pascals;
        held = measured.SupplyPressure!.Value.Pascals;
        path = new LiquidPath(measured.Agent.Density(temperature), measured.Agent.Viscosity(temperature), ambient);
        Tested = layout with { Agent = measured.Agent, Temperature = measured.Temperature, Supply = new HeldSupply(measured.SupplyPressure.Value) };
        drawn = Tested.Compile(OutletGeometry.Free(SupplyDrive.FirstBore(Tested)));
        nodes = new int[layout.Points.Length];
        for (var node = 0; node < drawn.Points.Length; node++) nodes[drawn.Points[node]] = node;
        drawnState = new SteadyState(drawn.Network);
        Solve(drawnState, held);
    }

    /// <inheritdoc/>
    public Layout Tested { get; }

    /// <summary>Mass flow of each run as drawn, kg/s, in the order of <see cref="Layout.Runs"/>.</summary>
    public double[] DrawnFlows()
    {
        var flows = new double[Tested.Runs.Length];
        for (var node = 1; node < drawn.Runs.Length; node++) flows[drawn.Runs[node]] = drawnState.Flow[node];
        return flows;
    }

    /// <summary>The drop from the supply to the surroundings over the velocity head of a run as drawn, dimensionless; infinite where nothing flows in it.</summary>
    /// <param name="run">Index of the run.</param>
    /// <param name="flow">Its flow as drawn, kg/s.</param>
    public double WholeLoss(int run, double flow) =>
        (held - ambient) * path.ReferenceDensity / (flow * flow * Resistance.PerCoefficient(Tested.Runs[run].Tube.Bore.Meters));

    /// <inheritdoc/>
    public double[] Read(Layout changed, double pressureFactor)
    {
        // The order of the solve follows from points and runs, and not from their sizes.
        var line = ReferenceEquals(changed, Tested) ? drawn : changed.Compile(OutletGeometry.Free(SupplyDrive.FirstBore(changed)));
        var state = new SteadyState(line.Network);
        state.StartFrom(drawnState);
        Solve(state, ambient + pressureFactor * (held - ambient));
        return Readings(changed, line, state);
    }

    /// <summary>Reads a test of the tested layout with other nozzles.</summary>
    /// <param name="groups">The makes.</param>
    /// <param name="factors">K-factor of each over that which was stated.</param>
    public double[] WithNozzles(ImmutableArray<NozzleGroup> groups, double[] factors)
    {
        var network = drawn.Network;
        double[] areas = [.. network.NozzleArea];
        for (var group = 0; group < groups.Length; group++)
            foreach (var point in groups[group].Points)
                areas[Array.BinarySearch(network.Nozzles, nodes[point])] *= factors[group];
        var line = drawn with { Network = network.WithNozzles(areas) };
        var state = new SteadyState(line.Network);
        state.StartFrom(drawnState);
        Solve(state, held);
        return Readings(Tested, line, state);
    }

    /// <summary>Reads tests of the tested layout in which one run loses more; each starts from the answer before.</summary>
    /// <param name="run">Index of the run.</param>
    /// <returns>A function of the loss coefficient, 0 or more, to the readings and the flow of the run, kg/s.</returns>
    public Func<double, (double[] Readings, double Flow)> WithLossIn(int run)
    {
        var network = drawn.Network.WithOwnConstants();
        var line = drawn with { Network = network };
        var state = new SteadyState(network);
        state.StartFrom(drawnState);
        var node = Array.IndexOf(drawn.Runs, run);
        var (own, per) = (network.Constant[node], Resistance.PerCoefficient(Tested.Runs[run].Tube.Bore.Meters));
        return coefficient =>
        {
            network.Constant[node] = own + coefficient * per;
            Solve(state, held);
            return (Readings(Tested, line, state), state.Flow[node]);
        };
    }

    void Solve(SteadyState state, double reservoir)
    {
        var report = SteadySolver.Solve(state, path, reservoir, cancellation);
        if (!report.Converged) throw new TestNotSolvedException(report.Failure ?? "The flow did not converge.");
    }

    double[] Readings(Layout layout, LayoutNetwork line, SteadyState state)
    {
        var readings = new double[measured.Readings.Length];
        for (var at = 0; at < readings.Length; at++)
        {
            var node = nodes[measured.Readings[at].Point];
            readings[at] = measured.Readings[at].Kind == MeasuredKind.Flow ? state.Flow[node] : Static(layout, line, state, node);
        }
        return readings;
    }

    // What a gauge in the wall of the tube reads: the total pressure less the velocity head of the tube that leads there.
    double Static(Layout layout, LayoutNetwork line, SteadyState state, int node)
    {
        var flow = state.Flow[node];
        var head = Resistance.PerCoefficient(layout.Runs[line.Runs[node]].Tube.Bore.Meters) * flow * flow / path.ReferenceDensity;
        return path.Pressure(state.Potential[node]) - head;
    }
}

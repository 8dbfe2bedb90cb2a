using FlowCalc.Losses;
using FlowCalc.Networks;

namespace FlowCalc.Layouts;

/// <summary>Turns a checked layout into the flat tree that the solver takes.</summary>
internal static class LayoutCompiler
{
    /// <summary>Compiles a layout. Depth first, so that a branch lies together in memory; without recursion, so that a chain may be of any length.</summary>
    /// <param name="layout">A checked layout.</param>
    /// <param name="outlet">What lies between the reservoir and the supply point.</param>
    public static LayoutNetwork Compile(this Layout layout, RunGeometry outlet)
    {
        var count = layout.Points.Length;
        var leaving = LeavingRuns.Of(layout);
        var builder = Builder(layout);
        int[] points = new int[count], runs = new int[count];
        double[] fittings = new double[count], boreChanges = new double[count];
        var supply = leaving.SupplyPoint;
        builder.AddRun(-1, outlet);
        (points[0], runs[0]) = (supply, -1);

        var waiting = new Stack<(int Run, int Above)>();
        PushReversed(waiting, leaving.Of(supply), 0);
        while (waiting.TryPop(out var next))
        {
            var run = layout.Runs[next.Run];
            var feed = runs[next.Above];
            var bore = run.Tube.Bore.Meters;
            var inletBore = feed < 0 ? bore : layout.Runs[feed].Tube.Bore.Meters;
            var from = layout.Points[run.From];
            var step = HasBoreStep(from, run) ? BoreStep(inletBore, bore) : 0;
            var fitted = FittingLosses.Constant(run, bore);
            var node = builder.AddRun(next.Above, Geometry(run, bore, step + fitted));
            (points[node], runs[node]) = (run.To, next.Run);
            (fittings[node], boreChanges[node]) = (fitted, step);
            if (from is Tee tee) builder.AddTeeLeg(node, Leg(tee, run, bore / inletBore), inletBore);
            foreach (var bend in run.Bends)
                builder.AddBend(node, SmoothBend.Shape(bend.Angle.Radians, bend.Radius.Meters / bore), bend.Count);
            FittingLosses.AddThroats(builder, node, run, bore);
            if (layout.Points[run.To] is Nozzle nozzle) builder.AddNozzle(node, KFactor.ToEffectiveArea(nozzle.KFactor));
            PushReversed(waiting, leaving.Of(run.To), node);
        }
        return new(builder.Build(), points, runs, fittings, boreChanges);
    }

    static NetworkBuilder Builder(Layout layout)
    {
        int bends = 0, nozzles = 0;
        foreach (var run in layout.Runs) bends += run.Bends.Length;
        foreach (var point in layout.Points) nozzles += point is Nozzle ? 1 : 0;
        return new(layout.Points.Length, bends, nozzles);
    }

    static RunGeometry Geometry(Run run, double bore, double constant)
    {
        return new(bore, Straight(run), run.Tube.Roughness.Meters / bore, run.Rise.Meters, constant);
    }

    /// <summary>Length of a run with the friction of straight tube, m: without the arcs of its bends.</summary>
    /// <param name="run">The run.</param>
    public static double Straight(Run run)
    {
        var straight = run.Length.Meters;
        foreach (var bend in run.Bends) straight -= bend.Arcs.Meters;
        // The reader refuses arcs longer than the run; what can be left below 0 is rounding.
        return Math.Max(straight, 0);
    }

    /// <summary>Whether a run loses by a step in bore where it leaves a point. A branch, and both outlets of a bullhead, hold the step in their own correlation.</summary>
    /// <param name="from">The point.</param>
    /// <param name="run">The run.</param>
    public static bool HasBoreStep(LayoutPoint from, Run run) =>
        from is Reducer || (from is Tee { FedThrough: TeePort.Run } && run.Leaves == TeePort.Run);

    /// <summary>The law of a leg of a tee.</summary>
    /// <param name="tee">The tee.</param>
    /// <param name="run">The run that leaves by it.</param>
    /// <param name="boreRatio">Bore of that run over that of the tube that feeds the tee, dimensionless.</param>
    public static TeeLeg Leg(Tee tee, Run run, double boreRatio)
    {
        var body = tee.Body ?? TeeBody.Smooth;
        if (tee.FedThrough == TeePort.Branch) return BullheadTee.Outlet(boreRatio, body);
        return run.Leaves == TeePort.Run ? RunFedTeeShape.Run(body) : RunFedTeeShape.Branch(boreRatio, 0, body);
    }

    /// <summary>Loss of a step in bore, 1/m⁴; 0 where the bores are one.</summary>
    /// <param name="from">Bore before it, m.</param>
    /// <param name="to">Bore behind it, m.</param>
    public static double BoreStep(double from, double to)
    {
        var (smaller, larger) = (Math.Min(from, to), Math.Max(from, to));
        if (!FittingLosses.IsTighter(smaller, larger)) return 0;
        var coefficient = to < from ? BoreChange.SharpContraction(smaller / larger) : BoreChange.Expansion(smaller / larger);
        return coefficient * Resistance.PerCoefficient(smaller);
    }

    static void PushReversed(Stack<(int Run, int Above)> waiting, ReadOnlySpan<int> runs, int above)
    {
        for (var i = runs.Length - 1; i >= 0; i--) waiting.Push((runs[i], above));
    }
}

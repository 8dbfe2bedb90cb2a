using FlowCalc.Agents;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Losses;
using FlowCalc.Networks;

namespace FlowCalc.Studies.Sizing;

/// <summary>All choices of all runs and nozzles of a liquid's line in solve order, with what their losses hang on beside the flow.</summary>
internal sealed class ChoiceTable
{
    const double PairsPerSolve = 100;

    readonly SizingModel model;
    readonly LayoutNetwork[] lines;
    readonly SupplyDrive drive;
    readonly LiquidPath path;

    ChoiceTable(SizingModel model, SupplyDrive drive, LiquidPath path)
    {
        (this.model, this.drive, this.path) = (model, drive, path);
        var choices = new byte[model.Count.Length];
        lines = new LayoutNetwork[Math.Max(1, model.Count.Length == 0 ? 1 : model.Count.Max(count => count))];
        for (var at = 0; at < lines.Length; at++)
        {
            for (var group = 0; group < choices.Length; group++) choices[group] = (byte)Math.Min(at, model.Count[group] - 1);
            var layout = model.Apply(choices);
            lines[at] = layout.Compile(drive.On(layout).Outlet);
        }
        var count = Network.Count;
        (Choices, Group, NozzleGroup) = (new int[count], new int[count], new int[count]);
        (Sum, Area, NozzleSum, Step, Leg) = (new double[count][], new double[count][], new double[count][], new double[count][], new TeeLeg[count][]);
        Wanted = new double[count];
        Array.Fill(Wanted, double.NaN);
        Choices[0] = 1;
        Group[0] = NozzleGroup[0] = -1;
        for (var node = 0; node < count; node++) Fill(node);
    }

    /// <summary>The tree, whose shape is that of any choice.</summary>
    public Network Network => lines[0].Network;

    /// <summary>Number of choices of the run to each node.</summary>
    public int[] Choices { get; }

    /// <summary>Group of the run to each node; −1 for none.</summary>
    public int[] Group { get; }

    /// <summary>Group of the nozzle at each node; −1 for none.</summary>
    public int[] NozzleGroup { get; }

    /// <summary>What each choice of a run adds to the objective.</summary>
    public double[][] Sum { get; }

    /// <summary>Effective area of each choice of the nozzle at a node, m²; null where there is no nozzle.</summary>
    public double[][] Area { get; }

    /// <summary>What each choice of a nozzle adds to the objective.</summary>
    public double[][] NozzleSum { get; }

    /// <summary>Loss of the step in bore by choice of the run before and its own, 1/m⁴; null where there is none.</summary>
    public double[][] Step { get; }

    /// <summary>Loss of the tee's leg by choice of the run before and its own, 1/m⁴; null where there is none.</summary>
    public TeeLeg[][] Leg { get; }

    /// <summary>Wanted share of the nozzle at each node; NaN where there is none.</summary>
    public double[] Wanted { get; }

    /// <summary>Density of the liquid, kg/m³.</summary>
    public double Density => path.ReferenceDensity;

    /// <summary>Gauge pressure of the reservoir, Pa.</summary>
    public double Reservoir => path.Potential(drive.Reservoir);

    /// <summary>Gauge pressure that the wish asks at nozzles, Pa; −∞ for none.</summary>
    public double LeastPressure => model.Wish.LeastPressure is { } least ? path.Potential(least.Pascals) : double.NegativeInfinity;

    /// <summary>What it takes to work out the bounds of one slice, in solves, about: every pair of a run's choice and that of the run before, for every bin of pressure.</summary>
    public int WorkOfSlice
    {
        get
        {
            var pairs = 0.0;
            for (var node = 1; node < Choices.Length; node++) pairs += Choices[node] * Choices[Network.Parent[node]];
            return 1 + (int)(pairs / PairsPerSolve);
        }
    }

    /// <summary>The table of a model; null where no bounds are known: of an agent that expands, or where nothing drives the flow.</summary>
    public static ChoiceTable? Of(SizingModel model)
    {
        if (model.Layout.Agent is not LiquidAgent liquid) return null;
        var drive = SupplyDrive.Of(model.Layout, liquid);
        if (drive.Failure is not null) return null;
        var temperature = model.Layout.Temperature.Kelvins;
        return new(model, drive, new(liquid.Density(temperature), liquid.Viscosity(temperature), model.Layout.AmbientPressure.Pascals));
    }

    /// <summary>Losses of each run by choice at given flows, without steps and tees, Pa; of node 0 that of the outlet.</summary>
    /// <param name="flows">Flow of each run, kg/s.</param>
    /// <param name="cancellation">Asked now and then.</param>
    public double[][] OwnLosses(double[] flows, CancellationToken cancellation)
    {
        var losses = new double[Network.Count][];
        for (var node = 0; node < losses.Length; node++) losses[node] = new double[Choices[node]];
        for (var at = 0; at < lines.Length; at++)
        {
            var parts = LossLedger.Book(lines[at], flows, Density, _ => path.Viscosity, cancellation);
            for (var node = 0; node < losses.Length; node++)
                if (at < losses[node].Length) losses[node][at] = parts[node].Outlet + parts[node].Tube + parts[node].Bends + parts[node].Fittings + parts[node].Rise;
        }
        return losses;
    }

    /// <summary>Gauge pressure at the supply point, Pa, for a loss of the outlet.</summary>
    /// <param name="outletLoss">Loss, Pa.</param>
    public double SupplyPressure(double outletLoss)
    {
        var open = Reservoir - outletLoss;
        return drive.SetPressure is { } set ? Math.Min(open, path.Potential(set)) : open;
    }

    void Fill(int node)
    {
        var point = lines[0].Points[node];
        if (model.Nozzles[point].Length > 0)
        {
            Wanted[node] = model.Wanted[point];
            NozzleGroup[node] = model.NozzleGroup[point];
            Area[node] = [.. model.Nozzles[point].Select(nozzle => KFactor.ToEffectiveArea(nozzle.KFactor))];
            NozzleSum[node] = NozzleGroup[node] < 0 ? [0] : model.NozzleSum[point];
        }
        if (node == 0)
        {
            Sum[0] = [0];
            return;
        }
        var (run, feed) = (lines[0].Runs[node], lines[0].Runs[Network.Parent[node]]);
        var variants = model.Runs[run];
        Choices[node] = variants.Length;
        Group[node] = model.RunGroup[run];
        Sum[node] = Group[node] < 0 ? [0] : model.RunSum[run];
        var from = model.Layout.Points[variants[0].From];
        if (feed < 0) return;
        if (LayoutCompiler.HasBoreStep(from, variants[0])) Step[node] = ByBores(feed, variants, LayoutCompiler.BoreStep);
        if (from is Tee tee) Leg[node] = ByBores(feed, variants, (inlet, bore) => Scaled(LayoutCompiler.Leg(tee, variants[0], bore / inlet), Resistance.PerCoefficient(inlet)));
    }

    T[] ByBores<T>(int feed, Run[] variants, Func<double, double, T> of)
    {
        var inlets = model.Runs[feed];
        var table = new T[inlets.Length * variants.Length];
        for (var inlet = 0; inlet < inlets.Length; inlet++)
            for (var own = 0; own < variants.Length; own++)
                table[inlet * variants.Length + own] = of(inlets[inlet].Tube.Bore.Meters, variants[own].Tube.Bore.Meters);
        return table;
    }

    static TeeLeg Scaled(TeeLeg leg, double factor) => new(leg.Own * factor, leg.Mixed * factor, leg.Inlet * factor, leg.Eighth * factor);
}

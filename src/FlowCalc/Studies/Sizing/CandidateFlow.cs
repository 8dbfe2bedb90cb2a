using FlowCalc.Agents;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Networks;

namespace FlowCalc.Studies.Sizing;

/// <summary>Solves choices by the true steady flow, each once, and counts the work.</summary>
/// <param name="model">The choices.</param>
/// <param name="cancellation">Stops a solve.</param>
internal sealed class CandidateFlow(SizingModel model, CancellationToken cancellation)
{
    // What a flow of an agent that expands takes in solves of a liquid's, about.
    const int WorkOfExpanding = 150;

    readonly Dictionary<byte[], Trial> known = new(new SameChoices());
    readonly SupplyDrive? drive = model.Layout.Agent is LiquidAgent liquid ? SupplyDrive.Of(model.Layout, liquid) : null;

    /// <summary>Choices solved.</summary>
    public int Solves { get; private set; }

    /// <summary>Work done, in solves of a liquid.</summary>
    public int Work { get; set; }

    /// <summary>Work of one choice.</summary>
    public int WorkOfOne => model.Layout.Agent is LiquidAgent ? 1 : WorkOfExpanding;

    /// <summary>The flow with a choice.</summary>
    /// <param name="choices">Choice of each group; copied where it is kept.</param>
    public Trial Of(byte[] choices)
    {
        if (known.TryGetValue(choices, out var trial)) return trial;
        cancellation.ThrowIfCancellationRequested();
        byte[] own = [.. choices];
        Solves++;
        var layout = model.Apply(own);
        trial = layout.Agent is LiquidAgent liquid ? OfLiquid(own, layout, liquid) : OfExpanding(own, layout);
        known.Add(own, trial);
        return trial;
    }

    Trial OfLiquid(byte[] choices, Layout layout, LiquidAgent liquid)
    {
        Work++;
        if (drive is not { Failure: null } given) return Failed(choices);
        var temperature = layout.Temperature.Kelvins;
        var path = new LiquidPath(liquid.Density(temperature), liquid.Viscosity(temperature), layout.AmbientPressure.Pascals);
        var (line, _) = LiquidFlow.Solve(layout, given.On(layout), path, turned: null, cancellation);
        if (line is null) return Failed(choices);
        var sum = new TrialSum(line.State.Flow[0]);
        foreach (var node in line.Line.Network.Nozzles)
            sum.Add(line.State.Flow[node], model.Wanted[line.Line.Points[node]], path.Pressure(line.State.Potential[node]));
        return sum.Of(choices, model);
    }

    Trial OfExpanding(byte[] choices, Layout layout)
    {
        Work += WorkOfExpanding;
        var flow = SteadyFlow.Solve(layout, cancellation);
        if (!flow.Report.Converged) return Failed(choices);
        var sum = new TrialSum(flow.Supply!.MassFlow.KilogramsPerSecond);
        foreach (var nozzle in flow.Nozzles)
            sum.Add(nozzle.MassFlow.KilogramsPerSecond, model.Wanted[nozzle.Point], nozzle.Pressure.Pascals);
        return sum.Of(choices, model);
    }

    Trial Failed(byte[] choices) =>
        new(choices, double.NaN, double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, model.Sum(choices), model.Changes(choices));

    sealed class SameChoices : IEqualityComparer<byte[]>
    {
        public bool Equals(byte[]? x, byte[]? y) => x.AsSpan().SequenceEqual(y);

        public int GetHashCode(byte[] choices)
        {
            // FNV-1a: the same on every machine.
            var hash = 2166136261;
            foreach (var choice in choices) hash = (hash ^ choice) * 16777619;
            return (int)hash;
        }
    }
}

using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Losses;

namespace FlowCalc.Explanations;

/// <summary>The losses of every run, in solve order, by the functions with which the answer books them.</summary>
/// <param name="log">Where to.</param>
/// <param name="line">The line.</param>
internal sealed class RunSteps(StepLog log, ExplainedLine line)
{
    int bend, throat, leg;

    /// <summary>Writes the losses of the next run down; not its rise.</summary>
    /// <param name="node">The run in solve order, over 0.</param>
    public void Add(int node)
    {
        var (run, flow, density) = (line.Run(node), line.Flow[node], line.Density);
        var (bore, viscosity) = (run.Tube.Bore.Meters, line.Viscosity(node));
        var parent = line.Network.Parent[node];
        if (line.Point(parent) is Tee tee) Leg(tee, run, node, parent);
        Step(run, parent, bore, flow);
        if (flow == 0)
        {
            Skip(node);
            return;
        }
        const string tube = "tube";
        var velocity = FrictionSteps.Velocity(log, tube, flow, density, bore);
        var reynolds = FrictionSteps.Reynolds(log, tube, flow, bore, viscosity);
        if (LayoutCompiler.Straight(run) is > 0 and var straight)
        {
            var factor = FrictionSteps.Factor(log, tube, reynolds, run.Tube.Roughness.Meters, bore);
            log.Loss(LossKind.Tube, TubeEquations.TubeFriction, tube, LossLedger.Friction(line.Network.Tubes, node, flow, density, viscosity), factor, straight, bore, density, velocity);
        }
        for (var i = 0; i < run.Bends.Length; i++, bend++)
            BendSteps.Add(log, line, node, bend, run.Bends[i], Name(run.Bends[i], i), reynolds, velocity);
        for (var i = 0; i < run.Fittings.Length; i++)
            FittingSteps.Add(log, line, node, run.Fittings[i], Name(run.Fittings[i], i), ref throat, velocity);
        if (run.LossCoefficient > 0) FittingSteps.Coefficient(log, LossKind.Fittings, "extra loss coefficient", 1, run.LossCoefficient, density, velocity);
    }

    /// <summary>Writes the rise of a run down, of a liquid.</summary>
    /// <param name="node">The run in solve order.</param>
    public void Rise(int node)
    {
        if (line.Network.Rise[node] is not 0 and var rise)
            log.Loss(LossKind.Rise, TubeEquations.Rise, "rise", HydrostaticRise.PressureDrop(line.Density, rise), line.Density, HydrostaticRise.StandardGravity, rise);
    }

    void Skip(int node)
    {
        while (bend < line.Network.Bends.Count && line.Network.Bends.Run[bend] == node) bend++;
        while (throat < line.Network.Throats.Count && line.Network.Throats.Run![throat] == node) throat++;
    }

    void Leg(Tee tee, Run run, int node, int parent)
    {
        var (own, inlet, density) = (line.Flow[node], line.Flow[parent], line.Density);
        var (bore, inletBore) = (run.Tube.Bore.Meters, line.FeedBore(parent, run.Tube.Bore.Meters));
        var at = leg++;
        if (inlet == 0) return;
        var name = $"tee {tee.Id}";
        var share = log.Add(TeeEquations.FlowShare, name, own / inlet, own, inlet);
        var body = tee.Body ?? TeeBody.Smooth;
        var coefficient = LayoutCompiler.Leg(tee, run, bore / inletBore).Coefficient(Math.Clamp(share, 0, 1)).Coefficient;
        if (tee.FedThrough == TeePort.Branch) log.Add(TeeEquations.Bullhead, name, coefficient, BullheadTee.Factor(body), share, inletBore, bore);
        else if (run.Leaves == TeePort.Run) log.Add(TeeEquations.Run, name, coefficient, share, RunFedTeeShape.RunExtra(body));
        else log.Add(TeeEquations.Branch, name, coefficient, share, bore, inletBore, RunFedTeeShape.BranchExtra(body));
        var velocity = FrictionSteps.Velocity(log, $"{name}: inlet", inlet, density, inletBore);
        log.Loss(LossKind.Tees, FittingEquations.CoefficientLoss, name, LossLedger.Leg(line.Network.Tees, at, own, inlet, density), 1, coefficient, density, velocity);
    }

    void Step(Run run, int parent, double bore, double flow)
    {
        var from = line.FeedBore(parent, bore);
        var (smaller, larger) = (Math.Min(from, bore), Math.Max(from, bore));
        if (flow == 0 || !LayoutCompiler.HasBoreStep(line.Point(parent), run) || !FittingLosses.IsTighter(smaller, larger)) return;
        var name = bore < from ? "step to a smaller bore" : "step to a larger bore";
        var coefficient = bore < from ? FittingSteps.Contraction(log, name, smaller, larger) : FittingSteps.Expansion(log, name, smaller, larger);
        FittingSteps.Coefficient(log, LossKind.BoreChanges, name, 1, coefficient, line.Density, FrictionSteps.Velocity(log, $"{name}: the smaller", flow, line.Density, smaller));
    }

    static string Name(Bend bend, int at) => FormattableString.Invariant($"bend {at + 1}: {(bend.Count > 1 ? $"{bend.Count} of " : "")}{bend.Angle.Degrees:0.##}°");

    static string Name(PlacedFitting placed, int at) => FormattableString.Invariant($"fitting {at + 1}: {(placed.Count > 1 ? $"{placed.Count} of " : "")}{placed.Fitting.Name ?? placed.Fitting.Kind}");
}

using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Losses;

namespace FlowCalc.Explanations;

/// <summary>The loss of a run's formed bends.</summary>
internal static class BendSteps
{
    /// <summary>Writes equal bends down.</summary>
    /// <param name="log">Where to.</param>
    /// <param name="line">The line.</param>
    /// <param name="node">The run in solve order.</param>
    /// <param name="at">The bends among those of the network.</param>
    /// <param name="bend">The bends as the layout has them.</param>
    /// <param name="part">What to call them.</param>
    /// <param name="reynolds">Reynolds number in the tube, over 0.</param>
    /// <param name="velocity">Mean velocity, m/s.</param>
    public static void Add(StepLog log, ExplainedLine line, int node, int at, Bend bend, string part, double reynolds, double velocity)
    {
        var tube = line.Run(node).Tube;
        var (bore, roughness, angle, radius) = (tube.Bore.Meters, tube.Roughness.Meters, bend.Angle.Radians, bend.Radius.Meters);
        var shape = LossLedger.Shape(line.Network.Bends, at);
        var held = log.Add(BendEquations.HeldReynolds, part, SmoothBend.Held(reynolds), reynolds);
        var factor = log.Add(TubeEquations.Turbulent, part, Colebrook.Solve(held, roughness / bore).Factor, held, roughness, bore);
        var turbulent = log.Add(BendEquations.Turbulent, part, shape.PerFriction * factor + shape.Constant, factor, angle, radius, bore);
        var dean = log.Add(BendEquations.Dean, part, CurvedTube.DeanNumber(reynolds, radius / bore), reynolds, bore, radius);
        var curved = CurvedTube.Factor(reynolds, radius / bore);
        if (dean > CurvedTube.OnsetDean) log.Add(BendEquations.CurvedFriction, part, curved, reynolds, dean);
        else log.Add(TubeEquations.Laminar, part, curved, reynolds);
        var laminar = log.Add(BendEquations.Laminar, part, curved * shape.ArcOverBore, curved, angle, radius, bore);
        var coefficient = log.Add(BendEquations.Both, part, SmoothBend.Coefficient(reynolds, roughness / bore, shape), turbulent, laminar);
        log.Loss(
            LossKind.Bends, FittingEquations.CoefficientLoss, part, LossLedger.Bend(line.Network.Bends, at, line.Flow[node], line.Density, line.Viscosity(node)),
            bend.Count, coefficient, line.Density, velocity);
    }
}

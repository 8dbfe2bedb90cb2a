using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Losses;

namespace FlowCalc.Explanations;

/// <summary>The losses of a run's fittings, valves and extra coefficient.</summary>
internal static class FittingSteps
{
    /// <summary>Writes an extra coefficient of the run down.</summary>
    /// <param name="log">Where to.</param>
    /// <param name="kind">What it counts as.</param>
    /// <param name="part">What to call it.</param>
    /// <param name="count">Equal ones.</param>
    /// <param name="coefficient">K on the head of the velocity.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="velocity">Mean velocity, m/s.</param>
    public static void Coefficient(StepLog log, LossKind kind, string part, int count, double coefficient, double density, double velocity) =>
        log.Loss(kind, FittingEquations.CoefficientLoss, part, count * LossCoefficient.PressureDrop(coefficient, density, velocity), count, coefficient, density, velocity);

    /// <summary>Writes what has a flow coefficient down.</summary>
    /// <param name="log">Where to.</param>
    /// <param name="kind">What it counts as.</param>
    /// <param name="part">What to call it.</param>
    /// <param name="count">Equal ones.</param>
    /// <param name="flowCoefficient">Kv, m³/(s·√Pa).</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="flow">Mass flow, kg/s.</param>
    public static void FlowCoefficient(StepLog log, LossKind kind, string part, int count, double flowCoefficient, double density, double flow) =>
        log.Loss(
            kind, FittingEquations.FlowCoefficient, part, count * FlowCoefficientLoss.PressureDrop(flow / density, density, flowCoefficient).PressureDrop,
            count, density, flow, flowCoefficient);

    /// <summary>Writes a fitting of a run through which something flows down.</summary>
    /// <param name="log">Where to.</param>
    /// <param name="line">The line.</param>
    /// <param name="node">The run in solve order.</param>
    /// <param name="placed">The fitting.</param>
    /// <param name="part">What to call it.</param>
    /// <param name="throat">The friction inside it among that of the network's throats; counted on where it has one.</param>
    /// <param name="velocity">Mean velocity in the tube, m/s.</param>
    public static void Add(StepLog log, ExplainedLine line, int node, PlacedFitting placed, string part, ref int throat, double velocity)
    {
        var (fitting, count, flow, density) = (placed.Fitting, placed.Count, line.Flow[node], line.Density);
        var bore = line.Run(node).Tube.Bore.Meters;
        if (fitting.Kv is { } kv)
        {
            FlowCoefficient(log, LossKind.Fittings, part, count, kv, density, flow);
            return;
        }
        var own = FittingLosses.OwnBore(fitting, bore);
        var isTight = own != bore;
        var inside = isTight ? FrictionSteps.Velocity(log, $"{part}: its own bore", flow, density, own) : velocity;
        if (fitting.LossCoefficient is { } coefficient) Coefficient(log, LossKind.Fittings, part, count, coefficient, density, velocity);
        else if (fitting.Kind == Fitting.Elbow)
        {
            var angle = fitting.Angle?.Radians ?? Math.PI / 2;
            Coefficient(log, LossKind.Fittings, $"{part}: turn", count, log.Add(FittingEquations.SharpTurn, part, Mitre.Coefficient(angle), angle), density, inside);
        }
        if (!isTight) return;
        var isIn = fitting.Length is { Meters: > 0 };
        Tight(log, line, node, placed, part, own, inside, isIn ? throat : -1);
        if (isIn) throat++;
    }

    static void Tight(StepLog log, ExplainedLine line, int node, PlacedFitting placed, string part, double own, double velocity, int throat)
    {
        var (tube, count, flow, density) = (line.Run(node).Tube, placed.Count, line.Flow[node], line.Density);
        var bore = tube.Bore.Meters;
        var lengthOverBore = FittingLosses.LengthOverBore(placed.Fitting, own);
        if (ReducedBore.IsLong(lengthOverBore))
        {
            Coefficient(log, LossKind.Fittings, $"{part}: contraction", count, Contraction(log, part, own, bore), density, velocity);
            Coefficient(log, LossKind.Fittings, $"{part}: expansion", count, Expansion(log, part, own, bore), density, velocity);
        }
        else
        {
            var ((fromLength, fromTau), (toLength, toTau)) = ReducedBore.TauBetween(lengthOverBore);
            var tau = log.Add(FittingEquations.JetRecovery, part, ReducedBore.Tau(lengthOverBore), lengthOverBore * own, own, fromLength, fromTau, toLength, toTau);
            var coefficient = log.Add(FittingEquations.ThickOrifice, part, ReducedBore.ThickOrifice(1 - own / bore * (own / bore), lengthOverBore), tau, own, bore);
            Coefficient(log, LossKind.Fittings, $"{part}: thick orifice", count, coefficient, density, velocity);
        }
        if (throat < 0) return;
        var viscosity = line.Viscosity(node);
        var factor = FrictionSteps.Factor(log, $"{part}: its own bore", FrictionSteps.Reynolds(log, $"{part}: its own bore", flow, own, viscosity), tube.Roughness.Meters, own);
        log.Loss(
            LossKind.Fittings, TubeEquations.TubeFriction, $"{part}: friction inside{(count > 1 ? FormattableString.Invariant($", {count} together") : "")}",
            LossLedger.Friction(line.Network.Throats, throat, flow, density, viscosity), factor, count * placed.Fitting.Length!.Value.Meters, own, density, velocity);
    }

    /// <summary>Writes the coefficient of a contraction down.</summary>
    /// <param name="log">Where to.</param>
    /// <param name="part">What to call it.</param>
    /// <param name="smaller">The smaller bore, m.</param>
    /// <param name="larger">The larger bore, m.</param>
    public static double Contraction(StepLog log, string part, double smaller, double larger) =>
        log.Add(FittingEquations.Contraction, part, BoreChange.SharpContraction(smaller / larger), smaller, larger);

    /// <summary>Writes the coefficient of an expansion down.</summary>
    /// <inheritdoc cref="Contraction"/>
    public static double Expansion(StepLog log, string part, double smaller, double larger) =>
        log.Add(FittingEquations.Expansion, part, BoreChange.Expansion(smaller / larger), smaller, larger);
}

using FlowCalc.Losses;

namespace FlowCalc.Explanations;

/// <summary>Velocity, Reynolds number and friction factor of a flow in a bore.</summary>
internal static class FrictionSteps
{
    /// <summary>Writes the mean velocity down.</summary>
    /// <param name="log">Where to.</param>
    /// <param name="part">What it is about.</param>
    /// <param name="flow">Mass flow, kg/s.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="bore">Bore, m.</param>
    /// <returns>m/s.</returns>
    public static double Velocity(StepLog log, string part, double flow, double density, double bore) =>
        log.Add(TubeEquations.Velocity, part, flow / (density * Math.PI / 4 * bore * bore), flow, density, bore);

    /// <summary>Writes the Reynolds number down.</summary>
    /// <param name="log">Where to.</param>
    /// <param name="part">What it is about.</param>
    /// <param name="flow">Mass flow, kg/s.</param>
    /// <param name="bore">Bore, m.</param>
    /// <param name="viscosity">Dynamic viscosity, Pa·s.</param>
    public static double Reynolds(StepLog log, string part, double flow, double bore, double viscosity) =>
        log.Add(TubeEquations.ReynoldsNumber, part, 4 * flow / (Math.PI * bore * viscosity), flow, bore, viscosity);

    /// <summary>Writes down how the friction factor comes about.</summary>
    /// <param name="log">Where to.</param>
    /// <param name="part">What it is about.</param>
    /// <param name="reynolds">Reynolds number, over 0.</param>
    /// <param name="roughness">Height of the wall's roughness, m.</param>
    /// <param name="bore">Bore, m.</param>
    public static double Factor(StepLog log, string part, double reynolds, double roughness, double bore)
    {
        switch (DarcyFriction.Regime(reynolds))
        {
            case FlowRegime.Laminar:
                return log.Add(TubeEquations.Laminar, part, DarcyFriction.Laminar(reynolds), reynolds);
            case FlowRegime.Transition:
                var (end, slope) = DarcyFriction.TurbulentWithSlope(DarcyFriction.TurbulentLimit, roughness / bore);
                log.Add(TubeEquations.Turbulent, $"{part}: where the transition ends", end, DarcyFriction.TurbulentLimit, roughness, bore);
                log.Add(TubeEquations.TurbulentSlope, part, slope, end, roughness, bore);
                return log.Add(TubeEquations.Transition, part, DarcyFriction.Factor(reynolds, roughness / bore), reynolds, end, slope);
            default:
                return log.Add(TubeEquations.Turbulent, part, DarcyFriction.Turbulent(reynolds, roughness / bore), reynolds, roughness, bore);
        }
    }
}

namespace FlowCalc.Networks;

/// <summary>
/// What the network sees of a fluid: how its density falls with pressure along the path that it takes, and how it leaves a nozzle.
/// </summary>
/// <remarks>
/// The momentum balance of a run is Ψ(p1) − Ψ(p2) = loss(m) / ρ0 + weight, with the potential Ψ(p) = ∫ρ dp / ρ0. The solver's unknown is Ψ
/// itself: every tube is then linear in it, for liquid and gas alike, and dividing by the reference density ρ0 makes it a pressure for a
/// liquid. Its zero may be anywhere; near the surroundings' pressure small flows keep most digits. Implemented by structs, so that the solver is compiled anew, and inlined, for each path.
/// </remarks>
internal interface IExpansionPath
{
    /// <summary>Reference density ρ0, kg/m³, over 0.</summary>
    double ReferenceDensity { get; }

    /// <summary>Dynamic viscosity, Pa·s, over 0.</summary>
    double Viscosity { get; }

    /// <summary>Ψ outside the nozzles, Pa.</summary>
    double AmbientPotential { get; }

    /// <summary>Ψ(p), Pa; rises with p.</summary>
    /// <param name="pressure">Absolute total pressure, Pa.</param>
    double Potential(double pressure);

    /// <summary>The pressure that has this potential, Pa absolute.</summary>
    /// <param name="potential">Ψ, Pa.</param>
    double Pressure(double potential);

    /// <summary>Ψ lost by one metre of rise, Pa/m: ρ² g / ρ0.</summary>
    /// <param name="potential">Ψ, Pa.</param>
    double Weight(double potential);

    /// <summary>The tangent of a nozzle's law at the present state, as <c>T·m' = G·Ψ' − R</c>, T over 0.</summary>
    /// <param name="point">Which point of the network it is at.</param>
    /// <param name="potential">Ψ at the nozzle, Pa.</param>
    /// <param name="flow">Mass flow out of the nozzle, kg/s.</param>
    /// <param name="area">Area times discharge coefficient, m², over 0.</param>
    NozzleTangent Nozzle(int point, double potential, double flow, double area);
}

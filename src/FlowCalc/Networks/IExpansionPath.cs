namespace FlowCalc.Networks;

/// <summary>
/// What the network sees of a fluid: how its density falls with pressure along the path that it takes, and how it leaves a nozzle.
/// </summary>
/// <remarks>
/// The momentum balance of a run is Ψ(p1) − Ψ(p2) = loss(m) / ρ0 + weight, with Ψ(p) = ∫ρ dp / ρ0. Dividing by the reference density ρ0
/// makes Ψ the pressure itself for a liquid, so that a liquid pays nothing for the general form. Implemented by structs, so that the
/// solver is compiled anew, and inlined, for each path.
/// </remarks>
internal interface IExpansionPath
{
    /// <summary>True where the density does not depend on pressure: Ψ(p) = p.</summary>
    static abstract bool IsIncompressible { get; }

    /// <summary>Reference density ρ0, kg/m³, over 0.</summary>
    double ReferenceDensity { get; }

    /// <summary>Dynamic viscosity, Pa·s, over 0.</summary>
    double Viscosity { get; }

    /// <summary>Absolute pressure outside the nozzles, Pa.</summary>
    double AmbientPressure { get; }

    /// <summary>Ψ(p), Pa.</summary>
    /// <param name="pressure">Absolute total pressure, Pa.</param>
    double Potential(double pressure);

    /// <summary>dΨ/dp = ρ(p) / ρ0, dimensionless.</summary>
    /// <param name="pressure">Absolute total pressure, Pa.</param>
    double PotentialSlope(double pressure);

    /// <summary>Ψ lost by one metre of rise, Pa/m: ρ² g / ρ0.</summary>
    /// <param name="pressure">Absolute total pressure, Pa.</param>
    double Weight(double pressure);

    /// <summary>The tangent of a nozzle's law at the present state, as <c>t·m' = g·p' − r</c>.</summary>
    /// <param name="pressure">Absolute total pressure at the nozzle, Pa.</param>
    /// <param name="flow">Mass flow out of the nozzle, kg/s.</param>
    /// <param name="area">Area times discharge coefficient, m², over 0.</param>
    NozzleTangent Nozzle(double pressure, double flow, double area);
}

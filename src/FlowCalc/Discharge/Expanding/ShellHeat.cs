namespace FlowCalc.Discharge;

/// <summary>Heat from a bottle's shell to what is in it.</summary>
/// <remarks>
/// Gas: free convection, Nu = 0.13 Ra^(1/3) (McAdams 1954, from memory), with the conductivity of Eucken's rule k = μ·(cv + 9R/4). Liquid that boils: a constant coefficient,
/// the order of free convection in a liquid (common practice, no source). Both are uncertain by half again either way.
/// </remarks>
internal sealed record ShellHeat
{
    const double Nusselt = 0.13;

    // W/(m²·K).
    const double WettedCoefficient = 500;

    // What follows its wall more than so many times within a step is beyond an explicit rule; it is as good as the wall's temperature then.
    const double MostInStep = 2;

    /// <summary>Inside area of the shell, m².</summary>
    public required double Area { get; init; }

    /// <summary>Heat capacity of the shell, J/K; infinite for one that keeps its temperature.</summary>
    public double Capacity { get; init; } = double.PositiveInfinity;

    /// <summary>Effective gravity, m/s².</summary>
    public double Gravity { get; init; } = 9.80665;

    /// <summary>Multiplies both coefficients; 0 for no heat.</summary>
    public double Factor { get; init; } = 1;

    /// <summary>Whether the contents keep their temperature, whatever heat that takes; then no coefficient counts.</summary>
    public bool IsIsothermal { get; init; }

    /// <summary>A constant conductance instead, W/K; null for convection.</summary>
    public double? Conductance { get; init; }

    /// <summary>Heat to the contents, W.</summary>
    /// <param name="wall">Temperature of the shell, K.</param>
    /// <param name="contents">Temperature of the contents, K.</param>
    /// <param name="wetted">Part of the area that liquid wets, 0 to 1.</param>
    /// <param name="density">Density of the gas, kg/m³.</param>
    /// <param name="viscosity">Dynamic viscosity of the gas, Pa·s.</param>
    /// <param name="isochoric">cv of the gas, J/(kg·K).</param>
    /// <param name="gasConstant">Its gas constant, J/(kg·K).</param>
    /// <param name="capacity">Heat capacity of the contents, J/K.</param>
    /// <param name="step">Step of time, s, that the rate is for.</param>
    public double Rate(double wall, double contents, double wetted, double density, double viscosity, double isochoric, double gasConstant, double capacity, double step)
    {
        // Contents and shell come together by what each of them takes up.
        var most = MostInStep / ((1 / capacity + 1 / Capacity) * step);
        if (Conductance is { } fixedConductance) return Math.Min(fixedConductance, most) * (wall - contents);
        if (Factor == 0) return 0;
        var difference = wall - contents;
        var conductivity = viscosity * (isochoric + 2.25 * gasConstant);
        var prandtl = (isochoric + gasConstant) * viscosity / conductivity;
        var rayleigh = Gravity / contents * Math.Abs(difference) * density * density * prandtl / (viscosity * viscosity);
        var coefficient = (1 - wetted) * Nusselt * conductivity * Math.Cbrt(rayleigh) + wetted * WettedCoefficient;
        return Math.Min(Factor * coefficient * Area, most) * difference;
    }
}

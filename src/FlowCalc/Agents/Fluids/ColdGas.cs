namespace FlowCalc.Agents;

/// <summary>A gas colder than a little over its critical temperature, as if it never condensed: isochores go on straight, with the heat capacity of the thin gas.</summary>
/// <remarks>
/// For the end of a quick discharge, where the gas in a bottle would begin to condense. With p = p_c + β·(T − T_c) along each isochore, u and s follow from p and from each other's derivatives (Maxwell),
/// so that energy and entropy stay kept. Derived here.
/// </remarks>
internal sealed class ColdGas
{
    readonly Func<double, (HelmholtzState State, double Coupling)> edge;
    readonly double isochoric;

    /// <summary>Makes the continuation.</summary>
    /// <param name="temperature">Temperature below which it holds, K.</param>
    /// <param name="isochoric">cv of the thin gas there, J/(kg·K).</param>
    /// <param name="edge">State at that temperature by density, kg/m³, and the slope of β by density.</param>
    public ColdGas(double temperature, double isochoric, Func<double, (HelmholtzState State, double Coupling)> edge) => (Temperature, this.isochoric, this.edge) = (temperature, isochoric, edge);

    /// <summary>Temperature below which it holds, K.</summary>
    public double Temperature { get; }

    /// <summary>A state.</summary>
    /// <param name="temperature">Temperature, K, over 0 and below <see cref="Temperature"/>.</param>
    /// <param name="density">Density, kg/m³.</param>
    public HelmholtzState At(double temperature, double density)
    {
        var (at, slope) = edge(density);
        var (by, beta) = (temperature - Temperature, at.PressurePerKelvin);
        var (pressure, perDensity) = (at.Pressure + beta * by, at.PressurePerDensity + slope * by);
        var energy = at.Energy + isochoric * by;
        var coupling = temperature * beta * beta / (density * density);
        return new(
            pressure, beta, perDensity, energy, energy + pressure / density, at.Entropy + isochoric * Math.Log(temperature / Temperature), isochoric, isochoric + coupling / perDensity,
            Math.Sqrt(perDensity + coupling / isochoric));
    }
}

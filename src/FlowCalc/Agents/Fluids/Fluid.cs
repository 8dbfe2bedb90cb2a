using System.Collections.Concurrent;
using System.Collections.Immutable;

namespace FlowCalc.Agents;

/// <summary>A gas, a liquefied gas or a blend of gases with all that the engine asks of it. Immutable, safe to share between threads; its tables are made at first use.</summary>
/// <remarks>
/// Enthalpy and entropy have the equation's own zero everywhere, so that the equation, the fast surface and saturation agree. Nitrogen, argon and blends are
/// taken as gases that never condense, continued below a little over their critical temperature.
/// </remarks>
internal sealed class Fluid
{
    // Of the surface; bottles and nozzles stay within.
    const double ColdestGas = 85;
    const double OverCritical = 1.02;
    const double ColdestContinued = 20;
    const double ColdestVapour = 170;
    const double Hottest = 450;
    const double DensestGas = 2.3;
    const double DensestLiquid = 3.2;

    static readonly ConcurrentDictionary<string, Fluid> Known = new(StringComparer.Ordinal);

    readonly Lazy<HelmholtzSurface> surface;
    readonly Lazy<SaturationCurve>? saturation;
    readonly ColdGas? cold;
    readonly Saturation? exact;
    readonly DiluteViscosity gasViscosity;
    readonly SaturatedViscosity? liquidViscosity;
    readonly double coldest, densest;

    Fluid(string id)
    {
        Id = id;
        if (HelmholtzBlend.Of(id) is { } blend)
        {
            (Equation, Title, MolarMass, Sources) = (blend, blend.Title, blend.MolarMass, blend.Sources);
            (LowestTemperature, HighestTemperature) = (ColdestGas, Hottest);
            gasViscosity = DiluteViscosity.Of(blend.Components);
        }
        else
        {
            var equation = HelmholtzEquation.Of(id);
            (Equation, Title, MolarMass, Sources) = (equation, equation.Title, equation.MolarMass, equation.Sources);
            (LowestTemperature, HighestTemperature) = (equation.LowestTemperature, equation.HighestTemperature);
            gasViscosity = DiluteViscosity.Of(id, equation);
            if (id is not ("nitrogen" or "argon"))
            {
                exact = new Saturation(id, equation);
                saturation = new(() => new SaturationCurve(equation, exact));
                liquidViscosity = SaturatedViscosity.Of(id);
            }
        }
        (coldest, densest) = saturation is null ? (ColdestGas, DensestGas) : (Math.Max(ColdestVapour, LowestTemperature), DensestLiquid);
        var (low, high) = (Equation.ReducingTemperature / Math.Min(Hottest, HighestTemperature), Equation.ReducingTemperature / coldest);
        if (saturation is null)
        {
            var edge = OverCritical * CriticalTemperature;
            var tau = CriticalTemperature / edge;
            cold = new(edge, -GasConstant * tau * tau * Equation.Ideal(tau).ByTemperatureTwice, density => Edge(edge, density));
        }
        surface = new(() => new HelmholtzSurface(Equation, densest, low, high, saturation is null ? 40 : 96, saturation is null ? 80 : 96));
    }

    /// <summary>Temperature below which a gas is continued as if it never condensed, K; 0 for a fluid whose saturation is known.</summary>
    public double ContinuedBelow => cold?.Temperature ?? 0;

    /// <summary>Id, as a layout document names it.</summary>
    public string Id { get; }

    /// <summary>Name for people.</summary>
    public string Title { get; }

    /// <summary>The equation.</summary>
    public IFluidEquation Equation { get; }

    /// <summary>Molar mass, kg/mol.</summary>
    public double MolarMass { get; }

    /// <summary>Specific gas constant, J/(kg·K).</summary>
    public double GasConstant => Equation.GasConstant;

    /// <summary>Critical temperature, K: that which reduces the equation.</summary>
    public double CriticalTemperature => Equation.ReducingTemperature;

    /// <summary>Critical density, kg/m³: that which reduces the equation.</summary>
    public double CriticalDensity => Equation.ReducingDensity;

    /// <summary>Lowest temperature of the equation, K; of a fluid that condenses its triple point.</summary>
    public double LowestTemperature { get; }

    /// <summary>Highest temperature of the equation, K.</summary>
    public double HighestTemperature { get; }

    /// <summary>Keys into <see cref="ReferenceData.SourceCatalogue"/>.</summary>
    public ImmutableArray<string> Sources { get; }

    /// <summary>Saturation; null where the fluid is taken as a gas that never condenses.</summary>
    public SaturationCurve? Saturation => saturation?.Value;

    /// <summary>A fluid.</summary>
    /// <param name="id">nitrogen, argon, carbon-dioxide, HFC-227ea, HFC-125, HFC-23, HFC-236fa, FK-5-1-12, IG-55 or IG-541.</param>
    public static Fluid Of(string id) => Known.GetOrAdd(id, name => new Fluid(name));

    /// <summary>A state of one phase, in the fast form.</summary>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="density">Density, kg/m³, over 0.</param>
    /// <returns>NaN throughout outside the surface.</returns>
    public HelmholtzState At(double temperature, double density)
    {
        if (cold is not null && temperature < cold.Temperature && temperature > ColdestContinued) return cold.At(temperature, density);
        var (delta, tau) = (density / CriticalDensity, CriticalTemperature / temperature);
        if (!(delta > 0 && delta <= densest && temperature >= coldest && temperature <= Hottest)) return Nothing;
        return HelmholtzState.Of(GasConstant, temperature, density, delta, tau, surface.Value.All(delta, tau));
    }

    // ∂²p/∂T∂ρ beside the state, from ∂p/∂T = ρ·R·(1 + δ·αδ − δ·τ·αδτ).
    (HelmholtzState State, double Coupling) Edge(double temperature, double density)
    {
        var (delta, tau) = (density / CriticalDensity, CriticalTemperature / temperature);
        if (!(delta > 0 && delta <= densest)) return (Nothing, double.NaN);
        var alpha = surface.Value.All(delta, tau);
        var coupling = GasConstant * (1 + delta * (2 * (alpha.ByDensity - tau * alpha.ByBoth) + delta * (alpha.ByDensityTwice - tau * alpha.ByDensityTwiceAndTemperature)));
        return (HelmholtzState.Of(GasConstant, temperature, density, delta, tau, alpha), coupling);
    }

    static HelmholtzState Nothing => new(double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN);

    /// <summary>A state of one phase, by the equation itself.</summary>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="density">Density, kg/m³, over 0.</param>
    public HelmholtzState Exact(double temperature, double density) => Equation.At(temperature, density);

    /// <summary>Liquid and vapour in equilibrium, by the equation itself.</summary>
    /// <param name="temperature">Temperature, K, below the critical one.</param>
    /// <exception cref="InvalidOperationException">The fluid is taken as a gas that never condenses.</exception>
    public SaturatedPoint ExactSaturation(double temperature) => (exact ?? throw new InvalidOperationException($"{Title} is taken as a gas.")).At(temperature);

    /// <summary>Density of the liquid, or of the dense fluid above the critical temperature.</summary>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="pressure">Absolute pressure, Pa; below the vapour pressure the liquid is stretched.</param>
    /// <returns>kg/m³; NaN where there is no such state.</returns>
    public double LiquidDensity(double temperature, double pressure)
    {
        if (exact is null) return double.NaN;
        var start = temperature < 0.999 * CriticalTemperature ? exact.At(temperature).LiquidDensity : 2 * CriticalDensity;
        return FluidDensity.Of(Equation, temperature, pressure, start);
    }

    /// <summary>Density of the gas; above the critical temperature also of the dense fluid.</summary>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="pressure">Absolute pressure, Pa.</param>
    /// <returns>kg/m³; NaN where there is no such state.</returns>
    public double GasDensity(double temperature, double pressure)
    {
        var ideal = pressure / (GasConstant * temperature);
        if (exact is null || temperature < 0.999 * CriticalTemperature) return FluidDensity.Of(Equation, temperature, pressure, Math.Min(ideal, 0.8 * CriticalDensity));
        return FluidDensity.Of(Equation, temperature, pressure, Math.Min(ideal, 2 * CriticalDensity));
    }

    /// <summary>Dynamic viscosity of the saturated liquid, Pa·s; ln μ goes on in 1/T beyond the table.</summary>
    /// <param name="temperature">Temperature, K.</param>
    public double LiquidViscosity(double temperature) => liquidViscosity?.At(temperature) ?? gasViscosity.At(temperature);

    /// <summary>Dynamic viscosity of the thin gas, Pa·s.</summary>
    /// <param name="temperature">Temperature, K.</param>
    public double GasViscosity(double temperature) => gasViscosity.At(temperature);
}

using System.Collections.Immutable;

namespace FlowCalc.Agents;

/// <summary>A real gas in one phase, from a fundamental equation through a surface that is made once. Immutable, safe to share between threads.</summary>
/// <remarks>
/// From 200 K up pressures are within 2e-9 of the equation, (∂p/∂T) within 2e-8 and heat capacities within 1e-5; from 150 K within 5e-6, 1e-4 and 2e-3,
/// the last two for argon beside its critical point. Colder, thin gas (to 0.05 of the critical density from 85 K, 0.3 from 120 K) keeps to 1e-5, 1e-4 and
/// 1e-3. All measured by the tests. Below its saturation temperature the equation is followed as for a supercooled gas; denser still, between the limits of
/// stability, what it gives is smooth but no state, and pressures there stray from the equation's own by up to twice ρ·R·T.
/// </remarks>
public sealed class RealGas : IGas
{
    /// <summary>Lowest temperature of the data, K.</summary>
    public const double LowestTemperature = 85;

    /// <summary>Highest temperature of the data, K.</summary>
    public const double HighestTemperature = 650;

    const double HighestReducedDensity = 2.3;

    // kg/mol, dry air, US Standard Atmosphere 1976 (from memory).
    const double MolarMassOfAir = 0.0289645;

    static readonly Lazy<RealGas> NitrogenOnce = new(() => new RealGas("nitrogen"));
    static readonly Lazy<RealGas> ArgonOnce = new(() => new RealGas("argon"));
    static readonly Lazy<RealGas> AirOnce = new(() => new RealGas("air", "Air", MolarMassOfAir, Nitrogen));

    readonly HelmholtzEquation equation;
    readonly HelmholtzSurface surface;
    readonly double reducingDensity;

    RealGas(string id)
    {
        equation = HelmholtzEquation.Of(id);
        (Id, Title, GasConstant, reducingDensity) = (id, equation.Title, equation.GasConstant, equation.ReducingDensity);
        surface = new HelmholtzSurface(equation, HighestReducedDensity, equation.ReducingTemperature / HighestTemperature, equation.ReducingTemperature / LowestTemperature);
    }

    // The molar states of another gas, carried over by the molar mass.
    RealGas(string id, string title, double molarMass, RealGas like)
    {
        (equation, surface) = (like.equation, like.surface);
        var scale = molarMass / equation.MolarMass;
        (Id, Title, GasConstant, reducingDensity) = (id, title, like.GasConstant / scale, scale * like.reducingDensity);
    }

    /// <summary>Nitrogen.</summary>
    public static RealGas Nitrogen => NitrogenOnce.Value;

    /// <summary>Argon.</summary>
    public static RealGas Argon => ArgonOnce.Value;

    /// <summary>
    /// Dry air taken as nitrogen of another molar mass: the compressibility of nitrogen at the same temperature and molar density. At 300 K and a given
    /// density its pressure is too high by 0.3 % at 20 bar, 0.5 % at 40, 1.3 % at 100 and 4.3 % at 300; at 250 K by 0.4, 0.7, 1.9 and 6.5 %.
    /// </summary>
    public static RealGas Air => AirOnce.Value;

    /// <summary>Id, as a layout document names it.</summary>
    public string Id { get; }

    /// <summary>Name for people.</summary>
    public string Title { get; }

    /// <inheritdoc/>
    public double GasConstant { get; }

    /// <summary>Highest density of the data, kg/m³.</summary>
    public double HighestDensity => HighestReducedDensity * reducingDensity;

    /// <summary>Keys into <see cref="ReferenceData.SourceCatalogue"/>.</summary>
    public ImmutableArray<string> Sources => equation.Sources;

    /// <summary>State at a temperature and density.</summary>
    /// <param name="temperature">Temperature, K, <see cref="LowestTemperature"/> to <see cref="HighestTemperature"/>.</param>
    /// <param name="density">Density, kg/m³, from 0 to <see cref="HighestDensity"/>.</param>
    /// <returns>The state; NaN everywhere outside the range.</returns>
    public GasPoint At(double temperature, double density)
    {
        if (!(temperature is >= LowestTemperature and <= HighestTemperature && density >= 0 && density <= HighestDensity)) return new(double.NaN, double.NaN, double.NaN);
        var (delta, tau) = (density / reducingDensity, equation.ReducingTemperature / temperature);
        var (byDensity, byBoth, byTemperatureTwice) = surface.At(delta, tau);
        var compressibility = 1 + delta * byDensity;
        return new(
            density * GasConstant * temperature * compressibility, density * GasConstant * (compressibility - delta * tau * byBoth), -GasConstant * tau * tau * byTemperatureTwice);
    }

    /// <inheritdoc/>
    public double IdealHeatCapacityRatio(double temperature) => 1 + GasConstant / At(temperature, 0).HeatCapacity;
}

using System.Collections.Immutable;
using MathNet.Numerics.Interpolation;

namespace FlowCalc.Agents;

/// <summary>A real gas in one phase, from a fundamental equation through a table that is made once.</summary>
/// <remarks>
/// The table is a bicubic surface of the residual Helmholtz energy. From 180 K up it gives pressures within 1e-5 and heat capacities within 1e-3 of
/// the equation, and pressures of thin gas within 1e-4 below; measured in the tests. Below its saturation temperature the equation is followed as for a supercooled gas.
/// </remarks>
public sealed class RealGas : IGas
{
    /// <summary>Lowest temperature of the table, K.</summary>
    public const double LowestTemperature = 85;

    /// <summary>Highest temperature of the table, K.</summary>
    public const double HighestTemperature = 650;

    const double MostDensity = 2.3;

    static readonly Lazy<RealGas> NitrogenOnce = new(() => new RealGas("nitrogen"));
    static readonly Lazy<RealGas> ArgonOnce = new(() => new RealGas("argon"));
    static readonly Lazy<RealGas> AirOnce = new(() => new RealGas("nitrogen", "Air", MolarMassOfAir));

    // kg/mol, dry air, US Standard Atmosphere 1976 (from memory).
    const double MolarMassOfAir = 0.0289645;

    readonly HelmholtzEquation equation;
    readonly ResidualSurface surface;
    readonly double reducingDensity;

    // cv of the dilute gas over R, by τ.
    readonly CubicSpline idealHeat;

    RealGas(string id, string? title = null, double? molarMass = null)
    {
        equation = HelmholtzEquation.Of(id);
        Title = title ?? equation.Title;
        // The same molar states, carried over by the molar mass.
        var scale = (molarMass ?? equation.MolarMass) / equation.MolarMass;
        GasConstant = equation.GasConstant / scale;
        reducingDensity = equation.ReducingDensity * scale;
        idealHeat = IdealHeat(equation);
        surface = new ResidualSurface(equation, MostDensity, equation.ReducingTemperature / HighestTemperature, equation.ReducingTemperature / LowestTemperature);
    }

    /// <summary>Nitrogen.</summary>
    public static RealGas Nitrogen => NitrogenOnce.Value;

    /// <summary>Argon.</summary>
    public static RealGas Argon => ArgonOnce.Value;

    /// <summary>Dry air as nitrogen of air's molar mass: within 2 % of air's own pressure up to 100 bar and 5 % up to 300 bar at 27 °C.</summary>
    public static RealGas Air => AirOnce.Value;

    /// <summary>Name for people.</summary>
    public string Title { get; }

    /// <inheritdoc/>
    public double GasConstant { get; }

    /// <summary>Highest density of the table, kg/m³.</summary>
    public double HighestDensity => MostDensity * reducingDensity;

    /// <summary>Keys into <see cref="ReferenceData.SourceCatalogue"/>.</summary>
    public ImmutableArray<string> Sources => equation.Sources;

    /// <summary>State at a temperature and density.</summary>
    /// <param name="temperature">Temperature, K, within the table's range.</param>
    /// <param name="density">Density, kg/m³, from 0 to the highest.</param>
    /// <returns>The state; NaN everywhere outside the range.</returns>
    public GasPoint At(double temperature, double density)
    {
        if (!(temperature is >= LowestTemperature and <= HighestTemperature && density >= 0 && density <= HighestDensity)) return new(double.NaN, double.NaN, double.NaN);
        var (delta, tau) = (density / reducingDensity, equation.ReducingTemperature / temperature);
        var (byDensity, byBoth, byTemperatureTwice) = surface.At(delta, tau);
        var pressure = 1 + delta * byDensity;
        return new(
            density * GasConstant * temperature * pressure, density * GasConstant * (pressure - delta * tau * byBoth),
            GasConstant * (idealHeat.Interpolate(tau) - tau * tau * byTemperatureTwice));
    }

    /// <inheritdoc/>
    public double IdealHeatCapacityRatio(double temperature)
    {
        var cv = idealHeat.Interpolate(equation.ReducingTemperature / temperature);
        return (cv + 1) / cv;
    }

    static CubicSpline IdealHeat(HelmholtzEquation equation)
    {
        const int Pieces = 100;
        double[] tau = new double[Pieces + 1], heat = new double[Pieces + 1];
        for (var i = 0; i <= Pieces; i++)
        {
            // A little beyond the ends, where a natural spline is at its worst.
            tau[i] = equation.ReducingTemperature * (0.9 / HighestTemperature + i * (1.1 / LowestTemperature - 0.9 / HighestTemperature) / Pieces);
            heat[i] = -tau[i] * tau[i] * equation.Ideal(tau[i]).ByTemperatureTwice;
        }
        return CubicSpline.InterpolateNaturalSorted(tau, heat);
    }
}

using System.Collections.Immutable;
using System.Globalization;

namespace FlowCalc.Agents;

/// <summary>A liquid agent: its properties at a temperature and 1.01325 bara. Immutable, safe to share between threads.</summary>
/// <remarks>Liquids are taken as incompressible: at 20 °C water is 0.05 % denser for each 10 bar (Wagner, Pruss 2002).</remarks>
public sealed class LiquidAgent : Agent
{
    readonly ILiquidProperties properties;

    internal LiquidAgent(string id, string title, double? freezingPoint, string? note, ImmutableArray<string> sources, ILiquidProperties properties)
        : base(id, title, note, sources) => (FreezingPoint, this.properties) = (freezingPoint, properties);

    /// <inheritdoc/>
    public override AgentKind Kind => AgentKind.Liquid;

    /// <inheritdoc/>
    public override double? FreezingPoint { get; }

    /// <inheritdoc/>
    public override double LowestTemperature => properties.LowestTemperature;

    /// <inheritdoc/>
    public override double HighestTemperature => properties.HighestTemperature;

    /// <summary>Whether density and viscosity are constants given by the user.</summary>
    public bool IsConstant => properties is ConstantProperties;

    /// <summary>Density.</summary>
    /// <param name="temperature">Temperature, K, in the range of the data.</param>
    /// <returns>Density, kg/m³.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The data do not reach that temperature: nothing is extrapolated.</exception>
    public double Density(double temperature) => properties.Density(Checked(temperature));

    /// <summary>Dynamic viscosity.</summary>
    /// <param name="temperature">Temperature, K, in the range of the data.</param>
    /// <returns>Dynamic viscosity, Pa·s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The data do not reach that temperature: nothing is extrapolated.</exception>
    public double Viscosity(double temperature) => properties.Viscosity(Checked(temperature));

    /// <summary>Vapour pressure: of pure water for every agent on water, an upper bound for mixtures, as what is dissolved lowers it.</summary>
    /// <param name="temperature">Temperature, K, in the range of the data.</param>
    /// <returns>Absolute pressure, Pa; below 0 °C the value at 0 °C (an upper bound); 0 where it is unknown (one's own liquid).</returns>
    /// <exception cref="ArgumentOutOfRangeException">The data do not reach that temperature.</exception>
    public double VapourPressure(double temperature) => properties.VapourPressure(Checked(temperature));

    /// <summary>A liquid of one's own, constant in temperature.</summary>
    /// <param name="density">Density, kg/m³, above 0.</param>
    /// <param name="viscosity">Dynamic viscosity, Pa·s, above 0.</param>
    /// <param name="freezingPoint">Freezing point, K, above 0; null where it is not known.</param>
    /// <returns>An agent with the id <c>own-liquid</c>, without sources.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not above 0, or not finite.</exception>
    public static LiquidAgent Constant(double density, double viscosity, double? freezingPoint)
    {
        RequirePositive(density, nameof(density));
        RequirePositive(viscosity, nameof(viscosity));
        if (freezingPoint is { } point) RequirePositive(point, nameof(freezingPoint));

        return new("own-liquid", "Liquid given by the user", freezingPoint, "Density and viscosity are the user's and the same at every temperature.", [],
            new ConstantProperties(density, viscosity));
    }

    internal override double RestDensity(double temperature, double pressure) => Density(temperature);

    double Checked(double temperature) =>
        Covers(temperature) ? Math.Clamp(temperature, LowestTemperature, HighestTemperature) : throw new ArgumentOutOfRangeException(nameof(temperature), temperature, string.Create(
            CultureInfo.InvariantCulture, $"{Title}: the data run from {LowestTemperature:0.##} K to {HighestTemperature:0.##} K."));

    static void RequirePositive(double value, string name)
    {
        if (!(value > 0 && double.IsFinite(value))) throw new ArgumentOutOfRangeException(name, value, "Range: above 0, finite.");
    }
}

using CsCheck;
using FlowCalc.Agents;

namespace FlowCalc.Tests.Properties.Agents;

/// <summary>What calculus and thermodynamics ask of a fundamental equation and of the surface that stands for it.</summary>
public class HelmholtzLaws
{
    static readonly (HelmholtzEquation Equation, RealGas Gas)[] Both =
        [(HelmholtzEquation.Of("nitrogen"), RealGas.Nitrogen), (HelmholtzEquation.Of("argon"), RealGas.Argon)];

    // Gas, temperature K, density over the critical.
    static readonly Gen<(int Gas, double Temperature, double Density)> States =
        Gen.Select(Gen.Int[0, 1], Gen.Double[160, 640], Gen.Double[0.01, 2.2]).Select((gas, temperature, density) => (gas, temperature, density));

    static readonly IFluidEquation[] All =
    [
        .. new[] { "nitrogen", "argon", "carbon-dioxide", "HFC-227ea", "HFC-125", "HFC-23", "HFC-236fa", "FK-5-1-12" }.Select(HelmholtzEquation.Of),
        HelmholtzBlend.Of("IG-55")!, HelmholtzBlend.Of("IG-541")!,
    ];

    // Equation, temperature and density over the reducing ones; right beside the critical point carbon dioxide's slopes have no bound.
    static readonly Gen<(int Equation, double Temperature, double Density)> ReducedStates =
        Gen.Select(Gen.Int[0, All.Length - 1], Gen.Double[0.75, 1.4], Gen.Double[0.01, 2.6])
            .Where(state => Math.Abs(state.Item2 - 1) + Math.Abs(state.Item3 - 1) > 0.2)
            .Select((equation, temperature, density) => (equation, temperature, density));

    [Fact]
    public void Every_derivative_is_the_slope_of_the_one_below_it() => ReducedStates.Sample(state =>
    {
        var equation = All[state.Equation];
        var (d, t) = (state.Density, 1 / state.Temperature);
        HelmholtzDerivatives At(double density, double temperature) => equation.Ideal(temperature) + equation.Residual(density, temperature);
        const double step = 1e-5;
        var (at, less, more, colder, warmer) = (At(d, t), At(d - step, t), At(d + step, t), At(d, t + step), At(d, t - step));
        bool Slope(double stated, double from, double to, double scale) => Math.Abs(stated - (to - from) / (2 * step)) < 1e-5 * (scale + Math.Abs(stated));
        // Of the terms of carbon dioxide that are steepest beside its critical point, third and fourth derivatives are differences themselves.
        bool Steep(double stated, double from, double to, double scale) => Math.Abs(stated - (to - from) / (2 * step)) < 5e-3 * (scale + Math.Abs(stated));

        // Where a slope goes through 0 it is what it is the slope of that says how far off a difference may be.
        var (value, byDensity, byTemperature) = (1 + Math.Abs(at.Value), 1 + Math.Abs(at.ByDensity), 10 + Math.Abs(at.ByTemperature));
        return Slope(at.ByDensity, less.Value, more.Value, value) && Slope(at.ByDensityTwice, less.ByDensity, more.ByDensity, byDensity)
            && Slope(at.ByTemperature, warmer.Value, colder.Value, value) && Slope(at.ByTemperatureTwice, warmer.ByTemperature, colder.ByTemperature, byTemperature)
            && Slope(at.ByBoth, warmer.ByDensity, colder.ByDensity, byDensity) && Steep(at.ByDensityTwiceAndTemperature, warmer.ByDensityTwice, colder.ByDensityTwice, 10)
            && Steep(at.ByDensityAndTemperatureTwice, warmer.ByBoth, colder.ByBoth, 10)
            && Steep(at.ByBothTwice, warmer.ByDensityTwiceAndTemperature, colder.ByDensityTwiceAndTemperature, 100);
    }, iter: 2_000);

    [Fact]
    public void Properties_are_the_derivatives_of_one_free_energy() => ReducedStates.Sample(state =>
    {
        var equation = All[state.Equation];
        var (temperature, density) = (state.Temperature * equation.ReducingTemperature, state.Density * equation.ReducingDensity);
        var (kelvin, kilogram) = (1e-4 * temperature, 1e-4 * density);
        var at = equation.At(temperature, density);
        // Between the limits of stability there is no state, and beside them some properties have no bound.
        if (!(at.PressurePerDensity > 0.5 * equation.GasConstant * temperature)) return true;
        // Deep between liquid and vapour equations swing so that differences do not follow.
        if (state.Temperature < 1 && state.Density is > 0.3 and < 1.75) return true;
        // Nitrogen's and argon's steepest terms outrun differences there.
        if (state.Equation is < 2 or >= 8 && state.Temperature < 1.2) return true;
        var (cold, warm) = (equation.At(temperature - kelvin, density), equation.At(temperature + kelvin, density));
        var (thin, dense) = (equation.At(temperature, density - kilogram), equation.At(temperature, density + kilogram));
        static double Free(HelmholtzState state, double temperature) => state.Energy - temperature * state.Entropy;
        bool Same(double stated, double slope, double scale) => Math.Abs(stated - slope) < 1e-4 * (scale + Math.Abs(stated));

        var (r, ideal) = (equation.GasConstant, density * equation.GasConstant * temperature);
        return Same(at.IsochoricHeatCapacity, (warm.Energy - cold.Energy) / (2 * kelvin), r)
            && Same(at.IsochoricHeatCapacity / temperature, (warm.Entropy - cold.Entropy) / (2 * kelvin), r / temperature)
            && Same(at.Pressure, density * density * (Free(dense, temperature) - Free(thin, temperature)) / (2 * kilogram), ideal)
            && Same(-at.Entropy, (Free(warm, temperature + kelvin) - Free(cold, temperature - kelvin)) / (2 * kelvin), r)
            && Same(at.PressurePerKelvin, (warm.Pressure - cold.Pressure) / (2 * kelvin), ideal / temperature)
            && Same(at.PressurePerDensity, (dense.Pressure - thin.Pressure) / (2 * kilogram), ideal / density)
            && Same(at.Pressure - temperature * at.PressurePerKelvin, density * density * (dense.Energy - thin.Energy) / (2 * kilogram), ideal)
            && Same(at.Enthalpy, at.Energy + at.Pressure / density, r * temperature)
            && Same(at.SpeedOfSound * at.SpeedOfSound, at.PressurePerDensity * at.IsobaricHeatCapacity / at.IsochoricHeatCapacity, r * temperature);
    }, iter: 2_000);

    [Fact]
    public void The_surface_keeps_pressure_and_heat_capacity_consistent_to_its_own_rounding() => States.Sample(state =>
    {
        var (equation, gas) = Both[state.Gas];
        var (temperature, density) = (state.Temperature, state.Density * equation.ReducingDensity);
        var (kelvin, kilogram) = (1e-3 * temperature, 1e-3 * density);
        var at = gas.At(temperature, density);
        var (cold, warm) = (gas.At(temperature - kelvin, density), gas.At(temperature + kelvin, density));
        var (thin, dense) = (gas.At(temperature, density - kilogram), gas.At(temperature, density + kilogram));

        // (∂cv/∂ρ) = −T/ρ²·(∂²p/∂T²): Maxwell.
        var byDensity = (dense.HeatCapacity - thin.HeatCapacity) / (2 * kilogram);
        var byTemperature = -temperature / (density * density) * (warm.PressurePerKelvin - cold.PressurePerKelvin) / (2 * kelvin);
        return Math.Abs(at.PressurePerKelvin - (warm.Pressure - cold.Pressure) / (2 * kelvin)) < 2e-5 * at.PressurePerKelvin
            && Math.Abs(byDensity - byTemperature) * density < 1e-3 * gas.GasConstant;
    }, iter: 5_000);

    // A hair to either side of a corner or a side of the pieces.
    [Fact]
    public void From_piece_to_piece_nothing_jumps() => Gen.Select(
        Gen.Int[0, 1], Gen.Int[1, HelmholtzSurface.DensityPieces - 1], Gen.Int[1, HelmholtzSurface.TemperaturePieces - 1], Gen.Double[-0.5, 0.5], Gen.Double[-0.5, 0.5]).Sample(
        (which, i, j, x, y) =>
        {
            const double hair = 1e-10;
            var (equation, gas) = Both[which];
            var surface = new HelmholtzSides(equation, gas);
            // Deep among the two phases the equations peak a thousand times over what they are elsewhere.
            if (equation.ReducingTemperature / surface.Tau(j) < 150) i = Math.Min(i, 2);
            return surface.Same(surface.Density(i) * (1 - hair), surface.Density(i) * (1 + hair), surface.Tau(j + y), surface.Tau(j + y))
                && surface.Same(surface.Density(i + x), surface.Density(i + x), surface.Tau(j) * (1 - hair), surface.Tau(j) * (1 + hair));
        }, iter: 20_000);

    [Fact]
    public void A_density_gives_back_its_pressure_wherever_gas_is_stable() => States.Sample(state =>
    {
        var (equation, gas) = Both[state.Gas];
        var pressure = gas.At(state.Temperature, state.Density * equation.ReducingDensity).Pressure;

        return Math.Abs(GasDensity.Of(gas, state.Temperature, pressure) / (state.Density * equation.ReducingDensity) - 1) < 1e-7;
    }, iter: 5_000);

    readonly struct HelmholtzSides(HelmholtzEquation equation, RealGas gas)
    {
        public double Density(double piece) => gas.HighestDensity * piece / HelmholtzSurface.DensityPieces;

        public double Tau(double piece)
        {
            var (least, most) = (equation.ReducingTemperature / RealGas.HighestTemperature, equation.ReducingTemperature / RealGas.LowestTemperature);
            return least + (most - least) * piece / HelmholtzSurface.TemperaturePieces;
        }

        public bool Same(double density, double otherDensity, double tau, double otherTau)
        {
            var (temperature, otherTemperature) = (equation.ReducingTemperature / tau, equation.ReducingTemperature / otherTau);
            var (at, beside) = (gas.At(temperature, density), gas.At(otherTemperature, otherDensity));
            var ideal = density * gas.GasConstant * temperature;
            return Math.Abs(beside.Pressure - at.Pressure) < 1e-7 * (ideal + Math.Abs(at.Pressure))
                && Math.Abs(beside.PressurePerKelvin - at.PressurePerKelvin) < 1e-6 * (ideal / temperature + Math.Abs(at.PressurePerKelvin))
                && Math.Abs(beside.HeatCapacity - at.HeatCapacity) < 1e-6 * (gas.GasConstant + Math.Abs(at.HeatCapacity));
        }
    }
}

using FlowCalc.Agents;

namespace FlowCalc.Discharge;

/// <summary>The gas that drives the liquid, and how it takes heat.</summary>
/// <remarks>Energy balance of a uniform gas, open or closed: m·cv·dT/dt = T·(∂p/∂T)ρ·(V/ρ)·dρ/dt + Q.</remarks>
internal sealed record Cushion
{
    // The gas of a wall with more conductance than this, in 1/s of its own heat capacity, is at the wall's temperature to 1e-5.
    const double FollowsItsWall = 1e4;

    // Of its own rate of expansion.
    const double MostFollowing = 2000;

    /// <summary>The gas.</summary>
    public required IGas Gas { get; init; }

    /// <summary>How heat reaches it.</summary>
    public required CushionProcess Process { get; init; }

    /// <summary>Temperature at the start, K.</summary>
    public required double Temperature { get; init; }

    /// <summary>Density at the start, kg/m³.</summary>
    public required double Density { get; init; }

    /// <summary>Exponent of <see cref="CushionProcess.Polytropic"/>.</summary>
    public double Exponent { get; init; } = 1;

    /// <summary>Conductance of <see cref="CushionProcess.Conductance"/>, W/K.</summary>
    public double Conductance { get; init; }

    /// <summary>Heat capacity of the wall, J/K; infinite for a wall that keeps its temperature.</summary>
    public double WallHeatCapacity { get; init; } = double.PositiveInfinity;

    /// <summary>The film of <see cref="CushionProcess.Convection"/>; null for the other processes.</summary>
    public FreeConvection? Film { get; init; }

    /// <summary>Pressure of the gas, and what the energy balance needs.</summary>
    /// <param name="temperature">Temperature of the gas, K.</param>
    /// <param name="density">Density of the gas, kg/m³.</param>
    public GasPoint At(double temperature, double density)
    {
        if (Process == CushionProcess.Polytropic)
            return new(Gas.At(Temperature, Density).Pressure * Math.Pow(density / Density, Exponent), 0, 1);
        return Gas.At(Process == CushionProcess.Isothermal ? Temperature : temperature, density);
    }

    /// <summary>How fast gas and wall change their temperature.</summary>
    /// <param name="state">The gas and its surroundings.</param>
    /// <param name="point">Its state.</param>
    /// <param name="densityRate">dρ/dt, kg/(m³·s).</param>
    /// <param name="wallRate">Rate of the wall's temperature, K/s.</param>
    /// <returns>Rate of the gas temperature, K/s.</returns>
    public double Rates(in CushionState state, in GasPoint point, double densityRate, out double wallRate)
    {
        wallRate = 0;
        if (Process is CushionProcess.Isothermal or CushionProcess.Polytropic) return 0;
        var capacity = state.Mass * point.HeatCapacity;
        var expansion = state.Temperature * point.PressurePerKelvin / (state.Density * state.Density * point.HeatCapacity) * densityRate;
        if (Process == CushionProcess.Adiabatic) return expansion;
        var (wall, liquid) = Process == CushionProcess.Conductance ? (Conductance, 0) : Film!.Value.Conductances(state, point);
        if (wall > FollowsItsWall * capacity) return 0;
        // Gas that takes hours to expand has the temperature of what is around it: more heat than this changes its pressure by less than 2e-4 and only makes the steps small.
        var most = MostFollowing * Math.Abs(densityRate) / state.Density * capacity;
        if (Process == CushionProcess.Convection && wall + liquid > most) (wall, liquid) = (wall * most / (wall + liquid), liquid * most / (wall + liquid));
        var fromWall = wall * (state.WallTemperature - state.Temperature);
        wallRate = -fromWall / WallHeatCapacity;
        return expansion + (fromWall + liquid * (Temperature - state.Temperature)) / capacity;
    }
}

namespace FlowCalc.Agents;

/// <summary>How the properties of a liquid depend on temperature. Arguments are K and lie in the range: <see cref="LiquidAgent"/> has checked.</summary>
internal interface ILiquidProperties
{
    /// <summary>Lowest temperature of the data, K.</summary>
    double LowestTemperature { get; }

    /// <summary>Highest temperature of the data, K.</summary>
    double HighestTemperature { get; }

    /// <summary>Density, kg/m³.</summary>
    double Density(double temperature);

    /// <summary>Dynamic viscosity, Pa·s.</summary>
    double Viscosity(double temperature);

    /// <summary>Vapour pressure, Pa absolute; 0 where unknown.</summary>
    double VapourPressure(double temperature);
}

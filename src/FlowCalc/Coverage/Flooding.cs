namespace FlowCalc.Coverage;

/// <summary>How much agent makes which concentration in a closed space, and how long it stays.</summary>
/// <remarks>
/// Source: ISO 14520-1 and NFPA 2001 (from memory; the formula for halocarbons confirmed by a table for HFC-227ea seen second-hand).
/// Concentrations are parts of the volume, 0 to 1; specific volumes those of the agent's vapour at the pressure of the space, m³/kg.
/// </remarks>
public static class Flooding
{
    /// <summary>Oxygen in dry air, part of the volume.</summary>
    public const double OxygenOfAir = 0.2095;

    /// <summary>Mass of a halocarbon that makes a concentration; as much as it displaces leaves the space with agent in it.</summary>
    /// <param name="volume">Net volume, m³.</param>
    /// <param name="specificVolume">Specific volume, m³/kg.</param>
    /// <param name="concentration">Concentration, 0 to under 1.</param>
    /// <returns>m = (V/s)·C/(1 − C), kg.</returns>
    public static double HalocarbonMass(double volume, double specificVolume, double concentration) => volume / specificVolume * concentration / (1 - concentration);

    /// <summary>Concentration that a mass of a halocarbon makes.</summary>
    /// <param name="volume">Net volume, m³.</param>
    /// <param name="specificVolume">Specific volume, m³/kg.</param>
    /// <param name="mass">Mass, kg.</param>
    /// <returns>C = m·s/(V + m·s).</returns>
    public static double HalocarbonConcentration(double volume, double specificVolume, double mass) => mass * specificVolume / (volume + mass * specificVolume);

    /// <summary>Mass of an inert gas, or of carbon dioxide, that makes a concentration, the mixture leaving as it comes in.</summary>
    /// <param name="volume">Net volume, m³.</param>
    /// <param name="specificVolume">Specific volume at the temperature of the space, m³/kg.</param>
    /// <param name="concentration">Concentration, 0 to under 1.</param>
    /// <returns>m = (V/s)·ln(1/(1 − C)), kg.</returns>
    public static double InertMass(double volume, double specificVolume, double concentration) => -volume / specificVolume * Math.Log(1 - concentration);

    /// <summary>Concentration that a mass of an inert gas makes.</summary>
    /// <param name="volume">Net volume, m³.</param>
    /// <param name="specificVolume">Specific volume at the temperature of the space, m³/kg.</param>
    /// <param name="mass">Mass, kg.</param>
    /// <returns>C = 1 − exp(−m·s/V).</returns>
    public static double InertConcentration(double volume, double specificVolume, double mass) => 1 - Math.Exp(-mass * specificVolume / volume);

    /// <summary>Oxygen that is left.</summary>
    /// <param name="concentration">Concentration of the agent.</param>
    /// <returns>Part of the volume.</returns>
    public static double Oxygen(double concentration) => OxygenOfAir * (1 - concentration);

    /// <summary>Time in which fresh air thins a well mixed concentration to a part of it.</summary>
    /// <param name="volume">Volume, m³.</param>
    /// <param name="airflow">Fresh air, m³/s, over 0.</param>
    /// <param name="part">The part, over 0 to 1; a half for the half-life.</param>
    /// <returns>t = (V/Q)·ln(1/part), s.</returns>
    public static double ThinningTime(double volume, double airflow, double part) => -volume / airflow * Math.Log(part);

    /// <summary>Concentration of agent let into a stream of air, steady while both flow.</summary>
    /// <param name="massFlow">Agent, kg/s.</param>
    /// <param name="specificVolume">Specific volume, m³/kg.</param>
    /// <param name="airflow">Fresh air, m³/s.</param>
    /// <returns>C = ṁ·s/(ṁ·s + Q).</returns>
    public static double ThroughFlow(double massFlow, double specificVolume, double airflow) => massFlow * specificVolume / (massFlow * specificVolume + airflow);

    /// <summary>Whose rule <see cref="SmallVesselCarbonDioxide"/> is.</summary>
    public const string SmallVesselSource = "French order of 23 November 1987 on the safety of ships, articles 227-4.05 and 230-4.05: 0.714 kg for a cubic metre of gross volume";

    /// <summary>Carbon dioxide for the engine space of a small decked vessel.</summary>
    /// <param name="volume">Gross volume, m³.</param>
    /// <param name="airVolume">Volume of its bottles of compressed air, m³.</param>
    /// <param name="airPressure">Their gauge pressure, bar.</param>
    /// <returns>Q = (V + p·v)·0.714 kg.</returns>
    /// <remarks>Source: French order of 23 November 1987 on the safety of ships, articles 227-4.05 and 230-4.05 (open data, seen).</remarks>
    public static double SmallVesselCarbonDioxide(double volume, double airVolume, double airPressure) => (volume + airPressure * airVolume) * 0.714;
}

using UnitsNet;

namespace FlowCalc.Coverage;

/// <summary>What it takes to flood a zone.</summary>
/// <param name="Design">Concentration that puts the fire out, part of the volume.</param>
/// <param name="DesignSource">Whose figure that is.</param>
/// <param name="Coldest">Coldest temperature, for which the mass is.</param>
/// <param name="Volume">Volume that it is for, that of let-go compressed air in it.</param>
/// <param name="Mass">Mass that makes the design concentration at the coldest.</param>
/// <param name="MostMass">Mass that makes the highest concentration without harm seen at the hottest: no more may come where people are; null where there is no such figure.</param>
/// <param name="Pressure">Pressure of the space over that at the sea, by which every mass is less.</param>
public sealed record FloodingNeed(double Design, string DesignSource, Temperature Coldest, Volume Volume, Mass Mass, Mass? MostMass, double Pressure)
{
    /// <summary>Whether a mass is enough at the coldest and harmless at the hottest; null where no figure of harm is known.</summary>
    public bool? HasWindow => MostMass is { } most ? Mass <= most : null;
}

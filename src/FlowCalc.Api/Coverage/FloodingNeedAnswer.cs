using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Coverage;

/// <summary>What it takes to flood a zone.</summary>
/// <param name="Design">Concentration that puts the fire out, as a part of the volume.</param>
/// <param name="Source">Whose figure that is.</param>
/// <param name="Coldest">Coldest temperature, for which the mass is.</param>
/// <param name="Volume">Volume that it is for, air that bottles let go in it.</param>
/// <param name="Mass">Mass that makes the design concentration at the coldest.</param>
/// <param name="MostMass">Mass that makes the highest concentration without harm seen at the hottest; null where there is no such figure.</param>
/// <param name="Window">Whether one mass is enough at the coldest and harmless at the hottest; null where no figure of harm is known.</param>
/// <param name="PressurePart">Pressure of the space over that at the sea, by which every mass is less.</param>
public sealed record FloodingNeedAnswer(double Design, string Source, Quantity Coldest, Quantity Volume, Quantity Mass, Quantity? MostMass, bool? Window, double PressurePart);

using System.Collections.Immutable;

namespace FlowCalc.Circuits;

/// <summary>The currents of a circuit in one setting.</summary>
/// <param name="Parts">Current of every part, A, from its first end to its second; 0 where it does not conduct; NaN throughout where there is no answer.</param>
/// <param name="Source">Current that the source gives, A.</param>
/// <param name="SourceVoltage">Voltage of the source without load, V.</param>
/// <param name="SourceResistance">Its inner resistance, Ω.</param>
/// <param name="Resistances">Resistance of every part, Ω, with what is wrong with it.</param>
/// <param name="Lit">For every part whether it is a diode that conducts.</param>
public sealed record CircuitCurrents(
    ImmutableArray<double> Parts, double Source, double SourceVoltage, double SourceResistance, ImmutableArray<double> Resistances, ImmutableArray<bool> Lit);

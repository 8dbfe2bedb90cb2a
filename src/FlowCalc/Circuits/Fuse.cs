using UnitsNet;

namespace FlowCalc.Circuits;

/// <summary>A fuse.</summary>
/// <param name="Name">Its name.</param>
/// <param name="From">Index of the node of its first end.</param>
/// <param name="To">Index of the node of its second end.</param>
/// <param name="Resistance">Resistance when it is cold.</param>
/// <param name="Rating">Rated current, over 0.</param>
/// <param name="IsBlade">Whether it is a blade fuse of road vehicles, whose times are known.</param>
public sealed record Fuse(string Name, int From, int To, ElectricResistance Resistance, ElectricCurrent Rating, bool IsBlade) : CircuitPart(Name, From, To, Resistance);

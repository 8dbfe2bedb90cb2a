namespace FlowCalc.Workbench.Asking;

/// <summary>What is typed about sizes.</summary>
/// <param name="Tubes">Names of tubes to choose from.</param>
/// <param name="Orifices">Diameters to choose from, parted by commas.</param>
/// <param name="Free">Runs and nozzles that may change, parted by commas; empty for all.</param>
/// <param name="Deviation">Largest deviation, a part.</param>
/// <param name="Within">Shortest and longest time, parted by a comma.</param>
/// <param name="LeastPressure">Lowest pressure at a nozzle.</param>
/// <param name="Objective">The objective's word.</param>
sealed record SizeWishes(IReadOnlyList<string> Tubes, string Orifices, string Free, string Deviation, string Within, string LeastPressure, string Objective);

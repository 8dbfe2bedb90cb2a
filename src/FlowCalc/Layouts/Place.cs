using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>A place in the layout's axes.</summary>
/// <param name="X">Forward.</param>
/// <param name="Y">To the left.</param>
/// <param name="Z">Up.</param>
public readonly record struct Place(Length X, Length Y, Length Z);

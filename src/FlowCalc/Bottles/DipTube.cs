using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Bottles;

/// <summary>The tube inside a bottle that takes the liquid from its base to its outlet.</summary>
/// <param name="Bore">Inside diameter, 0.001 mm to 1 m.</param>
/// <param name="Roughness">Height of the wall's roughness.</param>
/// <param name="Length">Length from the outlet end.</param>
/// <param name="Inlet">Where the open end lies in the bottle's axes, from the centre of the base, as x, y (across) and z (towards the outlet end); three entries, or empty for straight down.</param>
/// <param name="Follows">True for a weighted pick-up that goes where the liquid is.</param>
public sealed record DipTube(Length Bore, Length Roughness, Length Length, ImmutableArray<Length> Inlet, bool Follows);

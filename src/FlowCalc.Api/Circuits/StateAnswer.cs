using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Circuits;

/// <summary>What the circuit does in one state with one push pressed, or none.</summary>
/// <param name="State">How the switches are set.</param>
/// <param name="Pressed">Name of the push that is pressed; null for none.</param>
/// <param name="MeantToFire">Whether it is meant to fire: armed, with a push for firing.</param>
/// <param name="SourceLowest">Current of the source at its weakest.</param>
/// <param name="SourceHighest">Current of the source at its strongest.</param>
/// <param name="Actuators">The actuators.</param>
/// <param name="Lamps">The lamps.</param>
public sealed record StateAnswer(
    [property: AllowedValues("off", "test", "armed")] string State, string? Pressed, bool MeantToFire, Quantity SourceLowest, Quantity SourceHighest,
    ImmutableArray<ActuatorStateAnswer> Actuators, ImmutableArray<LampStateAnswer> Lamps);

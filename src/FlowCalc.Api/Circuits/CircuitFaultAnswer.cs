using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Circuits;

/// <summary>One single fault, and what comes of it.</summary>
/// <param name="Kind">What is wrong: a part that is open, a node that touches the chassis, a contact that is corroded.</param>
/// <param name="Where">Name of the part or of the node.</param>
/// <param name="Margin">Least current over all-fire current of all actuators at the pushes that are there to fire them, with the source at its weakest; null where none fires without the fault.</param>
/// <param name="KeepsFromFiring">Whether an actuator gets less than its all-fire current.</param>
/// <param name="Shown">Whether a lamp is lit or dark in some row of the state table that is not so without the fault.</param>
/// <param name="FiresUnasked">Whether an actuator gets what may fire it where nothing is meant to, with the source at its strongest.</param>
/// <param name="Unasked">The largest current over what may fire it of any actuator where nothing is meant to fire.</param>
/// <param name="SourceCurrent">The largest current of the source at its strongest in any row.</param>
public sealed record CircuitFaultAnswer(
    [property: AllowedValues("open", "chassis", "corroded")] string Kind, string Where, double? Margin, bool KeepsFromFiring, bool Shown, bool FiresUnasked, double Unasked, Quantity SourceCurrent);

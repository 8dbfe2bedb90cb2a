using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Circuits;

/// <summary>What a firing circuit does in every state, with every press and with every single fault, and what there is to say about it.</summary>
/// <param name="Verdict">The worst severity of the findings; <c>pass</c> where there are none.</param>
/// <param name="Findings">What the engine noticed, worst first.</param>
/// <param name="Source">The source of the current.</param>
/// <param name="States">The state table: off, test and armed, each with nothing pressed and with each push.</param>
/// <param name="Presses">Every push for firing in the armed circuit, with the source at its weakest.</param>
/// <param name="Actuators">One entry an actuator.</param>
/// <param name="Wires">One entry a wire.</param>
/// <param name="Fuses">One entry a fuse.</param>
/// <param name="Faults">Every single fault that was tried.</param>
/// <param name="Assumptions">What the document left open of the circuit, and what was taken.</param>
/// <param name="Limits">The limits that the findings were held against.</param>
/// <param name="Cautions">What to keep in mind before relying on the answer.</param>
/// <param name="Engine">What gave the answer.</param>
public sealed record CircuitAnswer(
    [property: AllowedValues("pass", "note", "warn", "fail")] string Verdict,
    ImmutableArray<FindingAnswer> Findings,
    CircuitSourceAnswer Source,
    ImmutableArray<StateAnswer> States,
    ImmutableArray<PressAnswer> Presses,
    ImmutableArray<ActuatorAnswer> Actuators,
    ImmutableArray<WireAnswer> Wires,
    ImmutableArray<FuseAnswer> Fuses,
    ImmutableArray<CircuitFaultAnswer> Faults,
    ImmutableArray<Assumption> Assumptions,
    ImmutableArray<LimitAnswer> Limits,
    ImmutableArray<string> Cautions,
    EngineAnswer Engine);

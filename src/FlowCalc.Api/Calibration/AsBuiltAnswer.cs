using System.Collections.Immutable;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Calibration;

/// <summary>The system as the likeliest cause says that it was built, with its own agent and supply: its steady flow.</summary>
/// <param name="Changes">What makes the document that of the system as built; as a variant's <c>set</c> of <c>/v1/compare</c>, path to <c>to</c>, it gives its whole discharge too. Empty where the layout stands as drawn.</param>
/// <param name="Drawn">The flow of the layout as drawn, in short.</param>
/// <param name="Built">The flow of the system as built, in short.</param>
/// <param name="Nozzles">Every nozzle, drawn and built.</param>
public sealed record AsBuiltAnswer(ImmutableArray<CureChangeAnswer> Changes, CureOutcomeAnswer Drawn, CureOutcomeAnswer Built, ImmutableArray<BuiltNozzleAnswer> Nozzles);

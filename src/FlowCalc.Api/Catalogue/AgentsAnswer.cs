using System.Collections.Immutable;
using FlowCalc.ReferenceData;

namespace FlowCalc.Api.Catalogue;

/// <summary>The agents of the catalogue.</summary>
/// <param name="Agents">Agents named by an id alone.</param>
/// <param name="Mixtures">Mixtures named by an id and a mass fraction.</param>
/// <param name="Sources">The sources that they name.</param>
public sealed record AgentsAnswer(ImmutableArray<AgentAnswer> Agents, ImmutableArray<MixtureAnswer> Mixtures, ImmutableArray<Source> Sources);

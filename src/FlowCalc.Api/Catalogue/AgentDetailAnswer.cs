using System.Collections.Immutable;
using FlowCalc.ReferenceData;

namespace FlowCalc.Api.Catalogue;

/// <summary>One agent with its properties.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Title">Name for people.</param>
/// <param name="Note">What to know before relying on the figures; null for nothing.</param>
/// <param name="Strengths">One entry for a liquid; for a mixture one every 0.05 of mass fraction.</param>
/// <param name="Sources">Where the figures come from.</param>
public sealed record AgentDetailAnswer(string Id, string Title, string? Note, ImmutableArray<StrengthAnswer> Strengths, ImmutableArray<Source> Sources);

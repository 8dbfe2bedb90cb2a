using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Catalogue;

/// <summary>An agent that a layout may name by its id alone.</summary>
/// <param name="Id">Id, as <c>agent</c> names it in a layout document.</param>
/// <param name="Title">Name for people.</param>
/// <param name="Kind">How it is kept and how it flows, which says what a bottle of it states.</param>
/// <param name="FreezingPoint">Temperature at which the first ice forms; null where it is not known.</param>
/// <param name="Temperatures">The temperatures of bottle and agent that are answered.</param>
/// <param name="Note">What to know before relying on the figures; null for nothing.</param>
/// <param name="Sources">Keys of its sources.</param>
public sealed record AgentAnswer(
    string Id, string Title, [property: AllowedValues("liquid", "inert-gas", "liquefied-gas", "liquefied-under-nitrogen")] string Kind,
    Quantity? FreezingPoint, TemperatureRange Temperatures, string? Note, ImmutableArray<string> Sources);

using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using FlowCalc.ReferenceData;

namespace FlowCalc.Api.Catalogue;

/// <summary>One agent with its properties.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Title">Name for people.</param>
/// <param name="Kind">How it is kept and how it flows.</param>
/// <param name="Temperatures">The temperatures of bottle and agent that are answered; of a mixture those of its weakest strength.</param>
/// <param name="Note">What to know before relying on the figures; null for nothing.</param>
/// <param name="Cautions">What whoever lets it go has to know; empty for a liquid, whose cautions come with each answer.</param>
/// <param name="Strengths">One entry for a liquid; for a mixture one every 0.05 of mass fraction; none for a gas or a liquefied gas.</param>
/// <param name="Saturation">Of a liquefied gas liquid and vapour in equilibrium, every full 10 K and the ends; else empty.</param>
/// <param name="Chart">Of a gas or a liquefied gas the pressure of a bottle over its temperature; null for a liquid.</param>
/// <param name="Sources">Where the figures come from.</param>
public sealed record AgentDetailAnswer(
    string Id, string Title, [property: AllowedValues("liquid", "inert-gas", "liquefied-gas", "liquefied-under-nitrogen")] string Kind, TemperatureRange Temperatures,
    string? Note, ImmutableArray<string> Cautions, ImmutableArray<StrengthAnswer> Strengths, ImmutableArray<SaturationRow> Saturation, BottleChart? Chart, ImmutableArray<Source> Sources);

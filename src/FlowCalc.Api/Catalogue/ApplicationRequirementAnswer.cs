using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Catalogue;

/// <summary>What an application asks of a discharge.</summary>
/// <param name="Agents">The agents that it is asked of.</param>
/// <param name="Part">Part of the contents that has to be out.</param>
/// <param name="Earliest">Shortest time allowed; null for none.</param>
/// <param name="Latest">Longest time allowed; null for none.</param>
/// <param name="Source">Whose rule it is.</param>
public sealed record ApplicationRequirementAnswer([property: AllowedValues("any", "carbon-dioxide", "inert", "boiling")] string Agents, double Part, Quantity? Earliest, Quantity? Latest, string Source);

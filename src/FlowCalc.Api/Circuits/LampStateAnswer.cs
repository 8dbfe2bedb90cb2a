using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Circuits;

/// <summary>A lamp in one row of the state table.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Lowest">Its current with the source at its weakest.</param>
/// <param name="Highest">Its current with the source at its strongest.</param>
/// <param name="Is">What is seen: <c>lit</c>, <c>dark</c>, or <c>unsure</c> where it is lit by the strongest source alone.</param>
public sealed record LampStateAnswer(string Id, Quantity Lowest, Quantity Highest, [property: AllowedValues("dark", "unsure", "lit")] string Is);

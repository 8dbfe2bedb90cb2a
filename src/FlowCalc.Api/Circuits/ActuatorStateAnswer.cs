using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Circuits;

/// <summary>An actuator in one row of the state table.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Lowest">Its current with the source at its weakest.</param>
/// <param name="Highest">Its current with the source at its strongest.</param>
/// <param name="Does">What it does: <c>fires</c> where even the lowest current is sure to fire it, <c>may-fire</c> where the highest may, <c>rests</c> where none does.</param>
public sealed record ActuatorStateAnswer(string Id, Quantity Lowest, Quantity Highest, [property: AllowedValues("rests", "may-fire", "fires")] string Does);

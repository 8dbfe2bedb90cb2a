using System.Collections.Immutable;
using FlowCalc.Layouts;

namespace FlowCalc.Discharge;

/// <summary>The discharge of a layout in each of its cases.</summary>
/// <param name="Cases">One entry a case: temperatures in order, and for each the attitudes in order.</param>
/// <param name="Requirement">What the discharge has to do; null where neither the document nor the application says.</param>
/// <param name="IsRequirementStated">Whether the document states it; else it is the application's.</param>
/// <param name="Assumptions">The layout's assumptions, and those of the discharge.</param>
public sealed record DischargeResult(
    ImmutableArray<DischargeCase> Cases, Requirement? Requirement, bool IsRequirementStated, ImmutableArray<Assumption> Assumptions);

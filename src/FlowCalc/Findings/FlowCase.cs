using System.Collections.Immutable;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>What the rules of a steady flow look at.</summary>
sealed class FlowCase(Layout layout, FlowResult flow, UnitSystem units, ImmutableArray<Limit> limits, CancellationToken cancellationToken)
    : JudgedLayout(layout, units, limits, cancellationToken)
{
    public FlowResult Flow { get; } = flow;
}

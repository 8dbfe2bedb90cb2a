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
    Dictionary<int, int>? nozzles;

    public FlowResult Flow { get; } = flow;

    /// <summary>What each run costs the nozzles behind it.</summary>
    public BranchCosts Costs => field ??= new BranchCosts(this);

    public override double? Reservoir => Flow.Supply?.ReservoirPressure.Pascals;

    /// <summary>The place among the flow's nozzles of the one that stands at a point.</summary>
    /// <param name="point">Index of the point.</param>
    public int NozzleAt(int point)
    {
        if (nozzles is not null) return nozzles[point];
        nozzles = [];
        for (var nozzle = 0; nozzle < Flow.Nozzles.Length; nozzle++)
        {
            Pass(nozzle);
            nozzles[Flow.Nozzles[nozzle].Point] = nozzle;
        }
        return nozzles[point];
    }
}

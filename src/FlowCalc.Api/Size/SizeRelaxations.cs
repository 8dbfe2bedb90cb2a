using FlowCalc.Api.Answers;
using FlowCalc.Quantities;
using FlowCalc.Studies.Sizing;

namespace FlowCalc.Api.Size;

/// <summary>Writes what is in the way of a wish.</summary>
internal static class SizeRelaxations
{
    /// <summary>One requirement.</summary>
    public static InTheWayAnswer Of(SizingProblem problem, SizingRelaxation relaxation, UnitWriter write)
    {
        var (wish, ambient) = (problem.Wish, problem.Layout.AmbientPressure);
        var (word, kind, wished) = relaxation.Requirement switch
        {
            SizingRequirement.Deviation => ("deviation", (QuantityKind?)null, wish.Deviation!.Value),
            SizingRequirement.Within => ("within", QuantityKind.Time, (wish.Latest ?? wish.Earliest)!.Value.Seconds),
            SizingRequirement.LeastPressure => ("leastPressure", QuantityKind.Pressure, (wish.LeastPressure!.Value - ambient).Pascals),
            _ => throw new ArgumentOutOfRangeException(nameof(relaxation), relaxation.Requirement, "Not a requirement."),
        };
        var best = relaxation.Best - (kind == QuantityKind.Pressure ? ambient.Pascals : 0);
        Quantity? measure = relaxation.Choice is not null && double.IsFinite(best) ? write.Of(new Measure(best, kind)) : null;
        return new(word, relaxation.Choice is not null, measure, SizingWords.Of(relaxation.Requirement, wish, measure is null ? null : best, wished, relaxation.Choice is not null, write.System));
    }
}

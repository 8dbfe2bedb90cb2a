using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>What all rules look at, whatever answer they judge: a layout, the units of sentences, and the limits.</summary>
abstract class JudgedAnswer(Layout layout, UnitSystem units, ImmutableArray<Limit> limits)
{
    public Layout Layout { get; } = layout;

    public UnitSystem Units { get; } = units;

    public ImmutableArray<Limit> Limits { get; } = limits;

    /// <summary>Absolute pressure of the surroundings, Pa.</summary>
    public double Ambient { get; } = layout.AmbientPressure.Pascals;

    public Limit Limit(string code) => Find(Limits, code);

    protected static Limit Find(IEnumerable<Limit> limits, string code)
    {
        foreach (var limit in limits)
            if (limit.Code == code) return limit;
        throw new ArgumentException($"{code} has no limit.", nameof(code));
    }
}

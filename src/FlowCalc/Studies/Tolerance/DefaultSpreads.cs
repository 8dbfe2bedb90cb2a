using System.Collections.Immutable;
using System.Globalization;
using FlowCalc.Limits;
using FlowCalc.Studies.Sampling;

namespace FlowCalc.Studies.Tolerance;

/// <summary>What is spread, and how far, where a study says nothing.</summary>
public static class DefaultSpreads
{
    const double BorePart = 0.01;
    const double RoughnessPart = 0.5;
    const double Cutting = 0.005;
    const double NozzlePart = 0.02;
    const double PressurePart = 0.03;
    const double FillPart = 0.01;

    /// <summary>The variables, and what was taken for them.</summary>
    /// <param name="things">Everything that may be spread.</param>
    /// <returns>The variables in the order of the things; a thing whose usual spread leaves its possible values stays as designed, and an assumption says so.</returns>
    public static (ImmutableArray<SpreadVariable> Variables, ImmutableArray<Assumption> Assumptions) Of(ImmutableArray<SpreadThing> things)
    {
        var variables = ImmutableArray.CreateBuilder<SpreadVariable>();
        var assumptions = ImmutableArray.CreateBuilder<Assumption>();
        foreach (var kind in Enum.GetValues<SpreadKind>())
        {
            var alike = things.Where(thing => thing.Kind == kind).ToArray();
            if (alike.Length == 0) continue;
            assumptions.Add(new($"/spreads/{SpreadWords.Of(kind)}", Words(kind), DefaultLimits.CommonPractice));
            foreach (var thing in alike)
            {
                if (Usual(thing) is not { } values) continue;
                if ((thing.Flaw(values.Low) ?? thing.Flaw(values.High)) is { } flaw)
                    assumptions.Add(new($"/spreads/{thing.Path}", $"stays as designed, since the usual spread is not possible there: {flaw}", DefaultLimits.CommonPractice));
                else variables.Add(new(thing, values, DefaultLimits.CommonPractice));
            }
        }
        return (variables.DrainToImmutable(), assumptions.DrainToImmutable());
    }

    // A smooth tube has no roughness to be a part of.
    static Distribution? Usual(SpreadThing thing) => thing.Kind switch
    {
        SpreadKind.Bore => Distribution.Normal(thing.Design, BorePart * thing.Design),
        SpreadKind.Roughness => thing.Design > 0 ? Uniform(thing.Design, RoughnessPart * thing.Design) : null,
        SpreadKind.Length => Uniform(thing.Design, Cutting),
        SpreadKind.KFactor => Distribution.Normal(thing.Design, NozzlePart * thing.Design),
        SpreadKind.ChargePressure => Uniform(thing.Design, PressurePart * (thing.Design - thing.Base)),
        SpreadKind.Fill => Uniform(thing.Design, FillPart * thing.Design),
        _ => null,
    };

    static Distribution Uniform(double design, double half) => Distribution.Uniform(design, design - half, design + half);

    static string Words(SpreadKind kind) => kind switch
    {
        SpreadKind.Bore => Text($"normal with a standard deviation of {100 * BorePart:0.#} %, one for all runs of a size of tube"),
        SpreadKind.Roughness => Text($"anywhere within {100 * RoughnessPart:0.#} % either way, one for all runs of a size of tube"),
        SpreadKind.Length => Text($"anywhere within {1e3 * Cutting:0.#} mm either way, each run by itself: cut and bent by hand"),
        SpreadKind.KFactor => Text($"normal with a standard deviation of {100 * NozzlePart:0.#} %, each nozzle by itself"),
        SpreadKind.ChargePressure => Text($"anywhere within {100 * PressurePart:0.#} % of the gauge pressure either way"),
        SpreadKind.Fill => Text($"anywhere within {100 * FillPart:0.#} % either way"),
        _ => "not spread: what is hot and cold is told by cases",
    };

    static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

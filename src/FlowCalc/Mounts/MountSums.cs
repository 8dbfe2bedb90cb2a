using System.Collections.Immutable;
using FlowCalc.Layouts.Mounts;
using UnitsNet;

namespace FlowCalc.Mounts;

/// <summary>Puts load cases on checks and keeps the worst.</summary>
static class MountSums
{
    const double StandardGravity = 9.80665;

    /// <summary>Every case: one of any direction after the six along the layout's axes.</summary>
    public static IEnumerable<(string Name, double Acceleration, Direction? Direction, string Source)> Cases(IEnumerable<(MountLoad Load, string Source)> loads)
    {
        foreach (var (load, source) in loads)
        {
            if (load.Direction is null)
                foreach (var (word, direction) in Axes) yield return ($"{load.Name}: {word}", load.Acceleration, direction, source);
            yield return (load.Name, load.Acceleration, load.Direction is { } one ? one.ToUnit() : null, source);
        }
    }

    /// <summary>One check in one case.</summary>
    public static CheckResult Result(MountCheck check, int at, double acceleration, Direction? direction, MountFrame frame, CancellationToken cancellationToken)
    {
        var (use, load, worst) = check.At(Factor(acceleration), direction is { } one ? frame.FromLayout(one) : null, cancellationToken);
        return new(
            check.Kind, check.Part, check.Number, use, check.IsForce ? Force.FromNewtons(load) : null, check.IsForce ? Force.FromNewtons(check.Bears) : null, at,
            direction ?? frame.ToLayout(worst));
    }

    /// <summary>What the bolts of a group bear in one case.</summary>
    public static IEnumerable<BoltLoad> Bolts(GroupChecks group, double acceleration, Direction? direction, MountFrame frame, CancellationToken cancellationToken)
    {
        var factor = Factor(acceleration);
        for (var bolt = 0; bolt < group.Pulls.Count; bolt++)
        {
            var (pull, shear) = (Value(group.Pulls[bolt]), Value(group.Shears[bolt]));
            yield return new(group.Input.Part, bolt, Force.FromNewtons(pull), Force.FromNewtons(pull * group.Input.Prying), Force.FromNewtons(shear));
        }

        double Value(LoadMeasure measure) => direction is { } one ? measure.At(factor * frame.FromLayout(one)) : factor * measure.Peak(cancellationToken).Value;
    }

    /// <summary>The worst of checks that tell of strength; the first of equals.</summary>
    public static CheckResult? Governing(IEnumerable<CheckResult> checks) => checks.Where(check => check.IsOfStrength).MaxBy(check => check.Use);

    /// <summary>Force of a mass at an acceleration in g.</summary>
    public static Force ForceOf(Mass mass, double acceleration) => Force.FromNewtons(mass.Kilograms * Factor(acceleration));

    /// <summary>An acceleration in g as m/s².</summary>
    public static double Factor(double acceleration) => acceleration * StandardGravity;

    static ImmutableArray<(string Word, Direction Direction)> Axes { get; } =
    [
        ("forward", new(1, 0, 0)), ("rearward", new(-1, 0, 0)), ("to the left", new(0, 1, 0)), ("to the right", new(0, -1, 0)), ("up", new(0, 0, 1)), ("down", new(0, 0, -1)),
    ];
}

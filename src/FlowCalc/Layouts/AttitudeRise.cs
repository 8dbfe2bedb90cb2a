using System.Collections.Immutable;

namespace FlowCalc.Layouts;

/// <summary>What an attitude makes of the rise of a run.</summary>
internal static class AttitudeRise
{
    /// <summary>Effective rise, m: density times the standard gravity times it is the pressure that the run takes to be climbed.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="run">One of its runs.</param>
    /// <param name="gravity">Gravity less the acceleration of the frame, in g; standing upright 0, 0, −1.</param>
    /// <returns>From the places of its ends where both have one; else the run's rise, without what a sideways part of gravity would add.</returns>
    public static double Of(Layout layout, Run run, Direction gravity) =>
        layout.Points[run.From].At is { } from && layout.Points[run.To].At is { } to
            ? -(gravity.X * (to.X - from.X).Meters + gravity.Y * (to.Y - from.Y).Meters + gravity.Z * (to.Z - from.Z).Meters)
            : -gravity.Z * run.Rise.Meters;

    /// <summary>Runs of which an attitude counts no way sideways, as their ends have no places.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="gravity">Gravity less the acceleration of the frame, in g.</param>
    /// <returns>Indices in <see cref="Layout.Runs"/>, rising; none where gravity has no sideways part.</returns>
    public static ImmutableArray<int> WithoutSideways(Layout layout, Direction gravity)
    {
        if (gravity is { X: 0, Y: 0 }) return [];
        var runs = ImmutableArray.CreateBuilder<int>();
        for (var index = 0; index < layout.Runs.Length; index++)
        {
            var run = layout.Runs[index];
            if (layout.Points[run.From].At is null || layout.Points[run.To].At is null) runs.Add(index);
        }
        return runs.DrainToImmutable();
    }
}

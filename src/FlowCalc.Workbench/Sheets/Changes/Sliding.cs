using System.Text.Json.Nodes;
using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Workbench.Sheets.Changes;

/// <summary>Moves a point: a placed one in space, a tee of runs given by length along its line.</summary>
public static class Sliding
{
    // As short as a length can be said here, m.
    const double LeastLength = 0.0001;

    /// <summary>Moves a placed point.</summary>
    /// <param name="root">The document, changed in place.</param>
    /// <param name="layout">The same, read.</param>
    /// <param name="point">Index of the point, which has a place.</param>
    /// <param name="x">Forward, m.</param>
    /// <param name="y">To the left, m.</param>
    /// <param name="z">Up, m.</param>
    public static void Move(JsonObject root, Layout layout, int point, double x, double y, double z)
    {
        ArgumentNullException.ThrowIfNull(root);
        ArgumentNullException.ThrowIfNull(layout);
        PartNames.List(root, "points")[point]!.AsObject()["at"] = PlaceText.Of(layout.Points[point].At!.Value.Moved(x, y, z));
    }

    /// <summary>The run that feeds a point and the run that goes straight on from it, whose lengths a tee shares out; null where there are none, or where they are laid by places.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="point">Index of the point.</param>
    public static (int Feeding, int Leaving)? Line(Layout layout, int point)
    {
        ArgumentNullException.ThrowIfNull(layout);
        var feeding = Enumerable.Range(0, layout.Runs.Length).Where(run => layout.Runs[run].To == point && layout.Runs[run].Route is null).Select(run => (int?)run).FirstOrDefault();
        var leaving = Enumerable.Range(0, layout.Runs.Length).Where(run => layout.Runs[run].From == point && layout.Runs[run].Leaves != TeePort.Branch).Select(run => (int?)run).FirstOrDefault();
        return feeding is { } before && leaving is { } behind ? (before, behind) : null;
    }

    /// <summary>Moves a tee along its line: what one run gains the other loses, in length and in rise, and what lies along the tube stays where it is.</summary>
    /// <param name="root">The document, changed in place.</param>
    /// <param name="layout">The same, read.</param>
    /// <param name="line">The two runs; see <see cref="Line"/>.</param>
    /// <param name="by">How far downstream, m.</param>
    /// <param name="why">Why it cannot be done; null where it was.</param>
    public static void Along(JsonObject root, Layout layout, (int Feeding, int Leaving) line, double by, out string? why)
    {
        ArgumentNullException.ThrowIfNull(root);
        ArgumentNullException.ThrowIfNull(layout);
        var (before, behind) = (layout.Runs[line.Feeding], layout.Runs[line.Leaving]);
        why = Refuses(before, behind, by);
        if (why is not null) return;
        var runs = PartNames.List(root, "runs");
        var (first, second) = (runs[line.Feeding]!.AsObject(), runs[line.Leaving]!.AsObject());
        first["length"] = PlaceText.Of(before.Length + Length.FromMeters(by));
        second["length"] = PlaceText.Of(behind.Length - Length.FromMeters(by));
        var passed = by > 0 ? behind : before;
        if (passed.Rise.Meters != 0)
        {
            var rise = passed.Rise * (by / passed.Length.Meters);
            first["rise"] = PlaceText.Of(before.Rise + rise);
            second["rise"] = PlaceText.Of(behind.Rise - rise);
        }
        for (var at = 0; at < behind.Fittings.Length; at++)
            if (behind.Fittings[at].At is { } place) second["fittings"]![at]!["at"] = PlaceText.AtMost(place - Length.FromMeters(by));
    }

    static string? Refuses(Run before, Run behind, double by)
    {
        var shorter = by > 0 ? behind : before;
        if (shorter.Length.Meters - shorter.Bends.Sum(bend => bend.Arcs.Meters) <= Math.Abs(by) + LeastLength)
            return $"{shorter.Id} is too short for that: its straight tube has no {PlaceText.Of(Length.FromMeters(Math.Abs(by)))} to give.";
        if (behind.Clips is not null || !behind.HotPlaces.IsEmpty) return $"{behind.Id} has clips or hot places along it; take them off before the tee is moved.";
        var isPassed = before.Fittings.Any(fitting => fitting.At is { } place && place.Meters > before.Length.Meters + by - LeastLength)
            || behind.Fittings.Any(fitting => fitting.At is { } place && place.Meters < by);
        return isPassed ? $"A fitting of {(by > 0 ? behind.Id : before.Id)} is in the way; give it another place first." : null;
    }
}

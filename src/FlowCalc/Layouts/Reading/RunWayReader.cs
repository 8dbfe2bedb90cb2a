namespace FlowCalc.Layouts.Reading;

/// <summary>Reads the way of a run: by its length, or by places.</summary>
static class RunWayReader
{
    const double Slack = 1 + 1e-9;

    /// <summary>The way; null where it is missing or wrong, or where an end of the run is not known.</summary>
    public static RunWay? Read(ReadingContext context, in Members<RunField> members, ReadOnlySpan<PointDraft> points, int from, int to, Tube? tube)
    {
        var bore = tube?.Bore.Meters ?? double.NaN;
        if (from < 0 || to < 0) return Unknown(context, members, bore);
        ref readonly var start = ref points[from];
        ref readonly var end = ref points[to];
        if (start.HasPlace != end.HasPlace)
        {
            var (with, without) = start.HasPlace ? (start.Id, end.Id) : (end.Id, start.Id);
            context.Faults.Add(members.Owner, $"{Said.Name(with ?? "")} has a place (at) and {Said.Name(without ?? "")} has none: all points of a run have one, or none");
            return Unknown(context, members, bore);
        }
        return start.HasPlace
            ? RunRouteReader.Read(context, members, start, end, tube)
            : Required(context, members, bore);
    }

    // Which way the run should be given is not known, but what it gives can still be wrong.
    static RunWay? Unknown(ReadingContext context, in Members<RunField> members, double bore)
    {
        ByLength(context, members, bore);
        RunRouteReader.Corners(context, members[RunField.Via]);
        TubeReader.BendRadius(context, members[RunField.BendRadius], bore);
        return null;
    }

    static RunWay? Required(ReadingContext context, in Members<RunField> members, double bore)
    {
        members.Requires(context, RunField.Length, "the developed length, 0 to 10 km, or places (at) of both its points");
        members.Refuses(context, RunField.Via, "corners belong to a run whose points have places (at)");
        members.Refuses(context, RunField.BendRadius, "bendRadius belongs to a run whose points have places (at); a bend of a run given by its length has its own radius");
        return ByLength(context, members, bore);
    }

    static RunWay? ByLength(ReadingContext context, in Members<RunField> members, double bore)
    {
        var length = QuantityValue.Read(context, members[RunField.Length], Sizes.RunLength);
        var rise = members.Has(RunField.Rise) ? QuantityValue.Read(context, members[RunField.Rise], Sizes.Rise) : 0;
        var bends = BendReader.Read(context, members[RunField.Bends], bore);
        if (Math.Abs(rise) > length * Slack)
            context.Faults.Add(members[RunField.Rise], $"read {QuantityValue.Shown(members[RunField.Rise])}: over the run's length of {length:0.######} m; a run rises or falls by its length at most");
        var arcs = 0.0;
        foreach (var bend in bends) arcs += bend.Arcs.Meters;
        if (arcs > length * Slack)
            context.Faults.Add(members[RunField.Bends], $"the arcs of the bends are {arcs:0.######} m together, over the run's length of {length:0.######} m; the length is the developed one, arcs included");
        return double.IsFinite(length + rise) ? new RunWay(length, rise, bends, null) : null;
    }
}

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of a run.</summary>
enum RunField
{
    Id,
    From,
    To,
    Leaves,
    Tube,
    Bore,
    Roughness,
    Length,
    Rise,
    Bends,
    Via,
    BendRadius,
    Fittings,
    LossCoefficient,
    StartJoint,
    EndJoint,
    Clips,
    HotPlaces,
    Note,
}

/// <summary>Reads one run.</summary>
static class RunReader
{
    /// <summary>Reads a run, as far as that goes.</summary>
    public static RunDraft Read(ReadingContext context, JsonValue element, int index, PointDraft[] points, PointIndex ids, RunTubes tubes, NamedStock stock)
    {
        if (!LayoutFields.Run.TryRead(context, element, out var members)) return new RunDraft(element, -1, -1, false, null, null);
        var before = context.Faults.Count;
        members.Requires(context, RunField.From, "the id of the point that feeds it");
        members.Requires(context, RunField.To, "the id of the point that it feeds");
        var id = TextValue.Name(context, members[RunField.Id], "a run's id");
        var from = members.Has(RunField.From) ? ids.Find(context, members[RunField.From]) : -1;
        var to = members.Has(RunField.To) ? ids.Find(context, members[RunField.To]) : -1;
        var port = TextValue.Choice(context, members[RunField.Leaves], PointReader.Ports);
        var tube = tubes.Read(context, members, index);
        var way = RunWayReader.Read(context, members, points, from, to, tube);
        var fittings = RunFittingsReader.Read(context, members[RunField.Fittings], index, way?.Length ?? double.NaN, tube, stock.Fittings);
        var loss = NumberValue.Read(context, members[RunField.LossCoefficient], Sizes.LossCoefficient);
        var (startJoint, endJoint) = (JointReader.Read(context, members[RunField.StartJoint]), JointReader.Read(context, members[RunField.EndJoint]));
        var clips = RunFixingsReader.Clips(context, members[RunField.Clips], way?.Length ?? double.NaN);
        var hot = RunFixingsReader.HotPlaces(context, members[RunField.HotPlaces], way?.Length ?? double.NaN);
        var note = members.Has(RunField.Note) ? TextValue.Read(context, members[RunField.Note], "a note") : null;

        var leaves = port < 0 ? null : (TeePort?)port;
        var draft = new RunDraft(element, from, to, members.Has(RunField.Leaves), leaves, null);
        if (context.Faults.Count > before || from < 0 || to < 0 || tube is null || way is null) return draft;
        return draft with
        {
            Run = new Run
            {
                Id = id ?? $"{points[from].Id}-{points[to].Id}",
                From = from,
                To = to,
                Leaves = leaves,
                Tube = tube,
                Length = UnitsNet.Length.FromMeters(way.Value.Length),
                Rise = UnitsNet.Length.FromMeters(way.Value.Rise),
                Bends = way.Value.Bends,
                Fittings = fittings,
                LossCoefficient = double.IsFinite(loss) ? loss : 0,
                Route = way.Value.Route,
                StartJoint = startJoint,
                EndJoint = endJoint,
                Clips = clips,
                HotPlaces = hot,
                Note = note,
            },
        };
    }
}

using FlowCalc.Losses;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members that points may have; which of them, hangs on the kind.</summary>
enum PointField
{
    Id,
    Kind,
    At,
    Note,
    Insertion,
    CentreToStop,
    FedThrough,
    Body,
    Nozzle,
    KFactor,
    Orifice,
    Zone,
    Share,
    PressureRange,
    Aim,
    Spray,
}

/// <summary>Reads one point.</summary>
static class PointReader
{
    public static readonly Vocabulary Kinds = new("supply", "tee", "reducer", "junction", "nozzle", "cap");
    public static readonly Vocabulary Ports = new("run", "branch");
    public static readonly Vocabulary Bodies = new("smooth", "threaded");

    static readonly string KindRight = $"one of {Kinds.Listed}";

    /// <summary>Reads a point, as far as that goes.</summary>
    public static PointDraft Read(ReadingContext context, JsonValue element, int index, NamedStock stock)
    {
        if (!LayoutFields.Point.TryRead(context, element, out var members)) return new PointDraft(element, PointKind.Unknown, null, false, null, null, null);
        var before = context.Faults.Count;
        members.Requires(context, PointField.Id, "the point's name, unique among points");
        members.Requires(context, PointField.Kind, KindRight);
        var id = TextValue.Name(context, members[PointField.Id], "a point's id");
        var kind = (PointKind)TextValue.Choice(context, members[PointField.Kind], Kinds);
        var note = members.Has(PointField.Note) ? TextValue.Read(context, members[PointField.Note], "a note") : null;
        var at = members.Has(PointField.At) ? SpaceValue.Place(context, members[PointField.At]) : null;
        var joint = JointReader.Of(context, members[PointField.Insertion], members[PointField.CentreToStop]);
        Refuse(context, members, kind);

        var name = id ?? "";
        TeePort? port = null;
        LayoutPoint? point = kind switch
        {
            PointKind.Supply => new SupplyPoint(name, at, note),
            PointKind.Tee => Tee(context, members, name, at, note, index, out port),
            PointKind.Reducer => new Reducer(name, at, note),
            PointKind.Junction => new Junction(name, at, note),
            PointKind.Nozzle => NozzlePointReader.Read(context, members, name, at, note, stock),
            PointKind.Cap => new Cap(name, at, note),
            _ => null,
        };
        if (point is not null && joint.IsGiven) point = point with { Joint = joint };
        return new PointDraft(element, kind, id, members.Has(PointField.At), at, port, context.Faults.Count > before ? null : point);
    }

    static Tee Tee(ReadingContext context, in Members<PointField> members, string id, Place? at, string? note, int index, out TeePort? port)
    {
        members.Requires(context, PointField.FedThrough, "run or branch: the port that the flow comes in by");
        var fed = TextValue.Choice(context, members[PointField.FedThrough], Ports);
        var body = TextValue.Choice(context, members[PointField.Body], Bodies);
        if (!members.Has(PointField.Body)) context.Assumptions.Add("/points", index, "/body", "smooth", "the usual body of a fitting with a clear bore; a threaded one loses more");
        port = fed < 0 ? null : (TeePort)fed;
        return new Tee(id, at, note, port ?? TeePort.Run, body < 0 ? null : (TeeBody)body);
    }

    static void Refuse(ReadingContext context, in Members<PointField> members, PointKind kind)
    {
        // Where the kind is not known, nothing can be said of the members that hang on it.
        if (kind is PointKind.Unknown) return;
        for (var field = PointField.FedThrough; field <= PointField.Spray; field++)
        {
            var owner = field is PointField.FedThrough or PointField.Body ? PointKind.Tee : PointKind.Nozzle;
            if (owner != kind && members.Has(field))
                members.Refuses(context, field, $"{LayoutFields.Point.Name(field)} belongs to a {Kinds.Words[(int)owner]}; a {Kinds.Words[(int)kind]} has none");
        }
    }
}

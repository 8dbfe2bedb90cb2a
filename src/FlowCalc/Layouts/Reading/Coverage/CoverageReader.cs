using FlowCalc.Layouts.Coverage;

namespace FlowCalc.Layouts.Reading.Coverage;

/// <summary>Reads what the nozzles are to reach.</summary>
static class CoverageReader
{
    /// <summary>Most entries of each list.</summary>
    public const int MostEntries = 200;

    /// <summary>The coverage, null where it is missing or none; and its targets by name, which an aim may name.</summary>
    public static (CoveragePlan? Plan, NamedEntries<Target> Targets) Read(ReadingContext context, JsonValue element, NamedEntries<Zone> zones)
    {
        var isThere = LayoutFields.Coverage.TryReadOptional(context, element, out var members);
        var targets = Entries(context, members[CoverageField.Targets], "targets", Target);
        if (!isThere) return (null, targets);
        TextValue.Read(context, members[CoverageField.Note], "a note");
        return (new CoveragePlan
        {
            Targets = [.. targets.Entries],
            Surfaces = [.. Entries(context, members[CoverageField.Surfaces], "surfaces", (_, name, entry) => SurfaceReader.Read(context, name, entry, zones)).Entries],
            Persons = [.. Entries(context, members[CoverageField.Persons], "persons", Target).Entries],
            Bodies = [.. Entries(context, members[CoverageField.Bodies], "bodies", BodyOf).Entries],
        }, targets);

        Target? Target(ReadingContext _, string name, JsonValue entry)
        {
            if (!LayoutFields.Target.TryRead(context, entry, out var fields)) return null;
            TextValue.Read(context, fields[TargetField.Note], "a note");
            fields.Requires(context, TargetField.At, "its place, [x, y, z] in the layout's axes");
            var at = SpaceValue.Place(context, fields[TargetField.At]);
            var zone = ZoneReader.Named(context, fields[TargetField.Zone], zones);
            return at is { } place ? new Target(name, zone, place) : null;
        }
    }

    static NamedEntries<T> Entries<T>(ReadingContext context, JsonValue element, string what, Func<ReadingContext, string, JsonValue, T?> read)
        where T : class
    {
        var entries = NamedEntries<T>.Read(context, element, what, read);
        if (entries.Names.Count > MostEntries) context.Faults.Add(element, $"read {entries.Names.Count} entries: {what} are at most {MostEntries}");
        return entries;
    }

    static Body? BodyOf(ReadingContext context, string name, JsonValue element)
    {
        if (!LayoutFields.Body.TryRead(context, element, out var members)) return null;
        TextValue.Read(context, members[BodyField.Note], "a note");
        members.Requires(context, BodyField.From, "a corner of the box, [x, y, z] in the layout's axes");
        members.Requires(context, BodyField.To, "the corner across, [x, y, z] in the layout's axes");
        var (from, to) = (SpaceValue.Place(context, members[BodyField.From]), SpaceValue.Place(context, members[BodyField.To]));
        if (from is not { } one || to is not { } other) return null;
        if (one.X.Meters != other.X.Meters && one.Y.Meters != other.Y.Meters && one.Z.Meters != other.Z.Meters) return new Body(name, one, other);
        context.Faults.Add(element, "the corners from and to agree in a coordinate: a body is a box along the layout's axes with a volume, so they differ in all three");
        return null;
    }
}

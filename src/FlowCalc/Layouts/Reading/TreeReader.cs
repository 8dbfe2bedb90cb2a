using System.Collections.Immutable;
using System.Runtime.InteropServices;
using System.Text.Json;

namespace FlowCalc.Layouts.Reading;

/// <summary>The tree of a document.</summary>
/// <param name="Points">The points in the document's order.</param>
/// <param name="Runs">The runs in the document's order.</param>
/// <param name="Tubes">Sizes of tube that the document names.</param>
sealed record Tree(ImmutableArray<LayoutPoint> Points, ImmutableArray<Run> Runs, ImmutableArray<Tube> Tubes);

/// <summary>Reads points and runs, and checks that they make a tree.</summary>
static class TreeReader
{
    /// <summary>The tree; null where something is wrong.</summary>
    public static Tree? Read(ReadingContext context, in Members<DocumentField> root, NamedStock stock)
    {
        root.Requires(context, DocumentField.Points, "the points of the tree, an array");
        root.Requires(context, DocumentField.Runs, "the runs of the tree, an array");
        var before = context.Faults.Count;
        var hasPoints = IsList(context, root[DocumentField.Points], "points");
        var hasRuns = IsList(context, root[DocumentField.Runs], "runs");
        if (!hasPoints) return null;

        var ids = new PointIndex(root[DocumentField.Points].GetArrayLength());
        var points = ReadPoints(context, root[DocumentField.Points], ids, stock);
        ShareChecks.Run(context, root, points, stock.Zones);
        if (!hasRuns) return null;
        var tubes = new RunTubes(stock.Tubes);
        var runs = ReadRuns(context, root[DocumentField.Runs], points, ids, tubes, stock);
        TreeChecks.Run(context, root, points, runs);
        return context.Faults.Count > before ? null : new Tree(
            ImmutableCollectionsMarshal.AsImmutableArray(Array.ConvertAll(points, point => point.Point!)),
            ImmutableCollectionsMarshal.AsImmutableArray(Array.ConvertAll(runs, run => run.Run!)),
            tubes.Named);
    }

    static bool IsList(ReadingContext context, JsonValue element, string what)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return false;
        var most = context.Options.MaximumPoints;
        if (element.ValueKind is JsonValueKind.Array && element.GetArrayLength() <= most) return true;
        if (element.ValueKind is JsonValueKind.Array) context.Faults.Add(element, $"read {element.GetArrayLength()} {what}: {most} are the most that are read");
        else context.Faults.Add(element, $"read {Said.Value(element)}: {what} are an array of objects");
        return false;
    }

    static PointDraft[] ReadPoints(ReadingContext context, JsonValue element, PointIndex ids, NamedStock stock)
    {
        var points = new PointDraft[element.GetArrayLength()];
        var index = 0;
        foreach (var entry in element.EnumerateArray())
        {
            context.Pass(index);
            var point = PointReader.Read(context, entry, index, stock);
            if (point.Id is null) ids.IsPartial = true;
            else if (!ids.TryAdd(point.Id, index))
            {
                context.Faults.Add(entry, "id", $"read {Said.Name(point.Id)}: another point has that id already");
                ids.IsPartial = true;
                point = point with { Id = null };
            }
            points[index++] = point;
        }
        return points;
    }

    static RunDraft[] ReadRuns(ReadingContext context, JsonValue element, PointDraft[] points, PointIndex ids, RunTubes tubes, NamedStock stock)
    {
        var runs = new RunDraft[element.GetArrayLength()];
        HashSet<string> names = new(runs.Length, StringComparer.Ordinal);
        var index = 0;
        foreach (var entry in element.EnumerateArray())
        {
            context.Pass(index);
            var draft = RunReader.Read(context, entry, index, points, ids, tubes, stock);
            if (draft.Run is { } run && !names.Add(run.Id))
                context.Faults.Add(entry, "id", $"another run is named {Said.Name(run.Id)} already; a run without id is named by its points, from-to");
            runs[index++] = draft;
        }
        return runs;
    }
}

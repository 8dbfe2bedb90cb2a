using System.Collections.Immutable;
using System.Text.Json;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;
using FlowCalc.Studies.Sizing;

namespace FlowCalc.Studies.Reading;

/// <summary>Reads which runs and nozzles are free: ids, or groups of ids that keep one choice.</summary>
/// <param name="context">The reading.</param>
/// <param name="layout">The layout.</param>
/// <param name="hasTubes">Whether the stock has tubes.</param>
/// <param name="hasNozzles">Whether the stock has nozzles.</param>
sealed class FreeReader(ReadingContext context, Layout layout, bool hasTubes, bool hasNozzles)
{
    const string RunPrefix = "runs/", PointPrefix = "points/";
    const string Right = "free is an array of ids of runs and nozzles, or of arrays of them that keep one choice";

    readonly Dictionary<string, int> runs = Index(layout.Runs.Select(run => run.Id));
    readonly Dictionary<string, int> nozzles = Index(layout.Points.Select(point => point is Nozzle ? point.Id : null));
    readonly HashSet<(bool IsRun, int At)> taken = [];

    /// <summary>The groups; all runs and nozzles for which the stock has choices, each by itself, where nothing is said.</summary>
    public ImmutableArray<SizingGroup> Read(in Members<SizeField> members, SizeField field)
    {
        if (!members.Has(field))
            return [
                .. hasTubes ? Enumerable.Range(0, layout.Runs.Length).Select(run => new SizingGroup([run], [])) : [],
                .. hasNozzles ? nozzles.Values.Order().Select(point => new SizingGroup([], [point])) : []];
        var element = members[field];
        if (element.ValueKind is not JsonValueKind.Array || element.GetArrayLength() == 0)
        {
            context.Faults.Add(element, $"read {(element.ValueKind is JsonValueKind.Array ? "an empty array" : Said.Value(element))}: {Right}; leave it out where all of them are");
            return [];
        }
        var groups = ImmutableArray.CreateBuilder<SizingGroup>();
        var passes = 0;
        foreach (var entry in element.EnumerateArray())
        {
            context.Pass(passes++);
            if ((entry.ValueKind is JsonValueKind.Array ? Group(entry) : One(entry) is var (isRun, at) ? Of(isRun, [at]) : null) is { } group) groups.Add(group);
        }
        return groups.DrainToImmutable();
    }

    SizingGroup? Group(JsonValue entry)
    {
        if (entry.GetArrayLength() == 0)
        {
            context.Faults.Add(entry, $"read an empty group: {Right}");
            return null;
        }
        var (isRun, places) = ((bool?)null, ImmutableArray.CreateBuilder<int>());
        foreach (var member in entry.EnumerateArray())
        {
            if (One(member) is not var (kind, at)) continue;
            if (isRun is { } first && first != kind) context.Faults.Add(member, $"read {Said.Value(member)}: a group holds runs or nozzles, not both");
            else places.Add(at);
            isRun ??= kind;
        }
        return isRun is { } known && places.Count > 0 ? Of(known, places.DrainToImmutable()) : null;
    }

    static SizingGroup Of(bool isRun, ImmutableArray<int> places) => isRun ? new(places, []) : new([], places);

    (bool IsRun, int At)? One(JsonValue entry)
    {
        if (TextValue.Name(context, entry.ValueKind is JsonValueKind.String ? entry : default, "an id") is not { } id)
        {
            if (entry.ValueKind is not JsonValueKind.String) context.Faults.Add(entry, $"read {Said.Value(entry)}: {Right}");
            return null;
        }
        var (run, nozzle) = (Find(runs, id, RunPrefix), Find(nozzles, id, PointPrefix));
        if (run is { } && nozzle is { }) context.Faults.Add(entry, $"read {Said.Name(id)}: both a run and a nozzle have that id; write {RunPrefix}{Said.Plain(id)} or {PointPrefix}{Said.Plain(id)}");
        else if (run is null && nozzle is null)
            context.Faults.Add(entry, layout.Points.Any(point => point.Id == id)
                ? $"read {Said.Name(id)}: that point is no nozzle, so that there is nothing to choose in it"
                : $"read {Said.Name(id)}: no run and no nozzle has that id{NearNames.Advice(context, id, runs.Keys, nozzles.Keys)}");
        else if (!taken.Add((run is not null, run ?? nozzle!.Value))) context.Faults.Add(entry, $"repeated: {Said.Name(id)} is free already");
        else if (run is not null && !hasTubes) context.Faults.Add(entry, $"read {Said.Name(id)}: the stock has no tubes for a run");
        else if (nozzle is not null && !hasNozzles) context.Faults.Add(entry, $"read {Said.Name(id)}: the stock has no orifices, kFactors or nozzles for a nozzle");
        else return (run is not null, run ?? nozzle!.Value);
        return null;
    }

    static int? Find(Dictionary<string, int> known, string id, string prefix) =>
        known.TryGetValue(id, out var at) || (id.StartsWith(prefix, StringComparison.Ordinal) && known.TryGetValue(id[prefix.Length..], out at)) ? at : null;

    static Dictionary<string, int> Index(IEnumerable<string?> ids)
    {
        var index = new Dictionary<string, int>(StringComparer.Ordinal);
        var at = 0;
        foreach (var id in ids)
        {
            if (id is not null) index.TryAdd(id, at);
            at++;
        }
        return index;
    }
}

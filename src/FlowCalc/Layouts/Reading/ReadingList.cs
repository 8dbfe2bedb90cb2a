using System.Collections.Immutable;
using System.Text.Json;
using FlowCalc.Agents;
using FlowCalc.Quantities;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads the flows and pressures of a test at a held supply.</summary>
/// <param name="context">The reading.</param>
/// <param name="tree">The tree; null where it could not be read, so that nothing can be said of ids.</param>
/// <param name="liquid">The liquid of the test; null where it could not be read.</param>
/// <param name="temperature">Its temperature, K; NaN where it could not be read.</param>
/// <param name="part">Uncertainty of flows as a part, where the document states one for all.</param>
sealed class ReadingList(ReadingContext context, Tree? tree, LiquidAgent? liquid, double temperature, double? part)
{
    // What runs down a vessel's wall or is spilt does not shrink with what is collected.
    const double LeastOfMean = 0.01, LeastOfAmbient = 0.1;

    readonly double density = liquid is not null && double.IsFinite(temperature) ? liquid.Density(temperature) : double.NaN;
    readonly Dictionary<string, int> points = Index(tree);
    readonly List<MeasuredReading> flows = [];
    bool usesUsual, hasUsualPressure;

    /// <summary>The readings; empty where something is wrong.</summary>
    public ImmutableArray<MeasuredReading> Read(in Members<MeasuredField> members)
    {
        var before = context.Faults.Count;
        var (collected, direct, pressures) = (members[MeasuredField.Collected], members[MeasuredField.Flows], members[MeasuredField.Pressures]);
        var time = QuantityValue.Read(context, members[MeasuredField.Time], Sizes.CollectingTime);
        if (members.Has(MeasuredField.Collected)) members.Requires(context, MeasuredField.Time, "how long was collected; " + Sizes.CollectingTime.What + ", " + Sizes.CollectingTime.Words);
        else members.Refuses(context, MeasuredField.Time, "nothing was collected in that time: give collected too");
        if (!members.Has(MeasuredField.Collected) && !members.Has(MeasuredField.Flows) && !members.Has(MeasuredField.Pressures))
            context.Faults.Add(members.Owner, "read no reading: a test has collected with time, flows, pressures, or dischargeTime");
        Flows(collected, "collected", [Sizes.CollectedVolume, Sizes.CollectedMass], time);
        Flows(direct, "flows", [Sizes.ReadVolumeFlow, Sizes.ReadMassFlow], 1);
        var ofPressure = Pressures(pressures);
        if (context.Faults.Count == before && flows.Count > 0 && flows.TrueForAll(flow => flow.Value == 0))
            context.Faults.Add(members.Has(MeasuredField.Collected) ? collected : direct, "read nothing at every nozzle: a test in which nothing flows tells nothing of the system");
        if (context.Faults.Count > before) return [];
        if (flows.Count > 0) AddAssumptions();
        var least = LeastOfMean * (flows.Count > 0 ? flows.Average(flow => flow.Value) : 0);
        return [.. flows.Select(flow => flow with { Uncertainty = Math.Max(flow.Uncertainty, least) }), .. ofPressure];
    }

    void AddAssumptions()
    {
        if (usesUsual) context.Assumptions.Add("/measured/uncertainty", "4 % of a flow or of what was collected, 95 of 100 cases", "common practice, no source");
        context.Assumptions.Add("/measured/collected", "no flow is known better than to 1 % of their mean", "what clings to vessels; common practice, no source");
    }

    void Flows(JsonValue element, string list, SizeRange[] ways, double time)
    {
        var entries = NamedEntries<MeasuredReading>.Read(context, element, list, (_, name, entry) => Flow(name, entry, list, ways, time));
        if (element.ValueKind is JsonValueKind.Object && entries.Names.Count == 0) context.Faults.Add(element, $"read no nozzle: {list} has what was read by the nozzle's id");
    }

    MeasuredReading? Flow(string name, JsonValue entry, string list, SizeRange[] ways, double time)
    {
        var point = Point(name, entry, mustBeNozzle: true);
        if (MeasuredValue.Split(context, entry) is not var (value, uncertainty)) return null;
        if (Array.Find(ways, way => QuantityValue.Fits(value, way.Kind)) is not { } range)
        {
            context.Faults.Add(value, $"read {QuantityValue.Shown(value)}: {list} takes {string.Join(" or ", ways.Select(way => $"{KindWords.Of(way.Kind)} ({UnitTable.FittingUnits(way.Kind)})"))}");
            return null;
        }
        var read = QuantityValue.Read(context, value, range);
        var isUsual = uncertainty.ValueKind is JsonValueKind.Undefined && part is null;
        usesUsual |= isUsual;
        var width = MeasuredValue.Width(context, uncertainty, range, read, part ?? MeasuredValue.OfFlow, null);
        if (point is { } twice && flows.Exists(flow => flow.Point == twice)) context.Faults.Add(entry, $"{Said.Name(name)} has a reading already: a nozzle is under collected or under flows");
        var scale = (range.Kind is QuantityKind.Volume or QuantityKind.VolumeFlow ? density : 1) / time;
        if (point is not { } at || !double.IsFinite(read * scale) || !double.IsFinite(width)) return null;
        var reading = new MeasuredReading(MeasuredKind.Flow, at, read * scale, width * scale);
        flows.Add(reading);
        return reading;
    }

    IEnumerable<MeasuredReading> Pressures(JsonValue element)
    {
        var entries = NamedEntries<MeasuredReading>.Read(context, element, "pressures", (_, name, entry) => OfPressure(name, entry));
        if (element.ValueKind is JsonValueKind.Object && entries.Names.Count == 0) context.Faults.Add(element, "read no point: pressures has what was read by the point's id");
        return entries.Entries;
    }

    MeasuredReading? OfPressure(string name, JsonValue entry)
    {
        var point = Point(name, entry, mustBeNozzle: false);
        if (MeasuredValue.Split(context, entry) is not var (value, uncertainty)) return null;
        var read = PressureValue.Read(context, value);
        // A part of nothing is no uncertainty: a gauge near zero is no better than one near a tenth of an atmosphere.
        var size = Math.Max(Math.Abs(read - context.Ambient), LeastOfAmbient * context.Ambient);
        var width = MeasuredValue.Width(context, uncertainty, Sizes.Pressure, size, MeasuredValue.OfPressure, hasUsualPressure ? null : "/measured/pressures");
        hasUsualPressure |= uncertainty.ValueKind is JsonValueKind.Undefined;
        return point is { } at && double.IsFinite(read + width) ? new MeasuredReading(MeasuredKind.Pressure, at, read, width) : null;
    }

    int? Point(string name, JsonValue entry, bool mustBeNozzle)
    {
        if (tree is null) return null;
        var what = mustBeNozzle ? "nozzle" : "point";
        if (!points.TryGetValue(name, out var index))
            context.Faults.Add(entry, $"no {what} has the id {Said.Name(name)}{NearNames.Advice(context, name, mustBeNozzle ? [.. tree.Points.Where(point => point is Nozzle).Select(point => point.Id)] : points.Keys)}");
        else if (mustBeNozzle && tree.Points[index] is not Nozzle) context.Faults.Add(entry, $"{Said.Name(name)} is no nozzle: nothing can be collected of it");
        else if (tree.Points[index] is SupplyPoint) context.Faults.Add(entry, $"{Said.Name(name)} is the supply: its pressure is supplyPressure");
        else return index;
        return null;
    }

    static Dictionary<string, int> Index(Tree? tree)
    {
        var index = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var at = 0; tree is not null && at < tree.Points.Length; at++) index[tree.Points[at].Id] = at;
        return index;
    }
}

namespace FlowCalc.Layouts.Reading;

/// <summary>Checks that the shares which a document wants can all be had, and that all of them belong to somebody.</summary>
static class ShareChecks
{
    const double Slack = 1e-9;

    /// <summary>
    /// Adds up the shares, and looks for zones that want one and have no nozzle for all of it. A nozzle's own share within a zone that has one is part of the
    /// zone's, so it is held against that and not added.
    /// </summary>
    public static void Run(ReadingContext context, in Members<DocumentField> root, PointDraft[] points, NamedEntries<Zone> zones)
    {
        var total = 0.0;
        foreach (var zone in zones.Entries)
            if (zone.Share is { } share) total += share;
        var (isPartial, passes) = (false, 0);
        var within = new Dictionary<string, Asked>(StringComparer.Ordinal);
        foreach (ref readonly var point in points.AsSpan())
        {
            context.Pass(passes++);
            if (point.Point is null) isPartial = true;
            if (point.Point is not Nozzle nozzle) continue;
            if (nozzle.Zone is { } zone)
            {
                var asked = within.GetValueOrDefault(zone);
                within[zone] = new Asked(asked.Sum + (nozzle.Share ?? 0), asked.TakesTheRest || nozzle.Share is null);
            }
            if (nozzle.Share is { } own && !HasShare(zones, nozzle.Zone)) total += own;
        }
        CheckZones(context, zones, within, isPartial);
        if (!(total > 1 + Slack)) return;
        var at = root.Has(DocumentField.Zones) ? DocumentField.Zones : DocumentField.Points;
        context.Faults.Add(root[at], $"the shares of zones and nozzles add up to {total:0.#########}: 1 is the most");
    }

    static void CheckZones(ReadingContext context, NamedEntries<Zone> zones, Dictionary<string, Asked> within, bool isPartial)
    {
        var passes = 0;
        foreach (var (zone, element) in zones.Placed)
        {
            context.Pass(passes++);
            if (zone?.Share is not { } share) continue;
            var isNamed = within.TryGetValue(zone.Id, out var asked);
            if (isNamed && asked.Sum > share + Slack)
                context.Faults.Add(element, "share", $"read {share}: the nozzles of {Said.Name(zone.Id)} want {asked.Sum:0.#########} by their own shares, which is more than the zone's");
            // A nozzle that could not be read may be of this zone.
            else if (isPartial) continue;
            else if (!isNamed)
                context.Faults.Add(element, "share", $"read {share}: {Said.Name(zone.Id)} wants a share and no nozzle names it as its zone");
            else if (!asked.TakesTheRest && asked.Sum < share - Slack)
                context.Faults.Add(element, "share", $"read {share}: every nozzle of {Said.Name(zone.Id)} has a share of its own, and these add up to {asked.Sum:0.#########}; the rest of the zone's share belongs to no nozzle");
        }
    }

    static bool HasShare(NamedEntries<Zone> zones, string? id) => id is not null && zones.TryFind(id, out var zone) && zone?.Share is not null;

    /// <param name="Sum">The nozzles' own shares together.</param>
    /// <param name="TakesTheRest">Whether a nozzle has no share of its own, and so takes what the others leave.</param>
    readonly record struct Asked(double Sum, bool TakesTheRest);
}

namespace FlowCalc.Layouts.Reading;

/// <summary>Checks that the shares which a document wants can all be had.</summary>
static class ShareChecks
{
    const double Slack = 1e-9;

    /// <summary>
    /// Adds up the shares, and looks for zones that want one and have no nozzle. A nozzle's own share within a zone that has one is part of the
    /// zone's, so it is held against that and not added.
    /// </summary>
    public static void Run(ReadingContext context, in Members<DocumentField> root, PointDraft[] points, NamedEntries<Zone> zones)
    {
        var total = 0.0;
        var isPartial = false;
        var within = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var zone in zones.Entries)
            if (zone.Share is { } share) total += share;
        foreach (ref readonly var point in points.AsSpan())
        {
            if (point.Point is null) isPartial = true;
            if (point.Point is not Nozzle nozzle) continue;
            if (nozzle.Zone is { } zone) within[zone] = within.GetValueOrDefault(zone) + (nozzle.Share ?? 0);
            if (nozzle.Share is { } own && !HasShare(zones, nozzle.Zone)) total += own;
        }
        foreach (var zone in zones.Entries)
        {
            if (zone.Share is not { } share) continue;
            if (within.TryGetValue(zone.Id, out var asked))
            {
                if (asked > share + Slack)
                    context.Faults.Add(root[DocumentField.Zones].GetProperty(zone.Id), "share", $"read {share}: the nozzles of {Said.Name(zone.Id)} want {asked:0.#########} by their own shares, which is more than the zone's");
            }
            else if (!isPartial)
                context.Faults.Add(root[DocumentField.Zones].GetProperty(zone.Id), "share", $"read {share}: {Said.Name(zone.Id)} wants a share and no nozzle names it as its zone");
        }
        if (!(total > 1 + Slack)) return;
        var at = root.Has(DocumentField.Zones) ? DocumentField.Zones : DocumentField.Points;
        context.Faults.Add(root[at], $"the shares of zones and nozzles add up to {total:0.#########}: 1 is the most");
    }

    static bool HasShare(NamedEntries<Zone> zones, string? id) => id is not null && zones.TryFind(id, out var zone) && zone?.Share is not null;
}

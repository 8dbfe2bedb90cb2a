namespace FlowCalc.Layouts.Reading;

/// <summary>Checks that the shares which a document wants can all be had.</summary>
static class ShareChecks
{
    const double Slack = 1e-9;

    /// <summary>Adds up the shares, and looks for zones that want one and have no nozzle.</summary>
    public static void Run(ReadingContext context, in Members<DocumentField> root, PointDraft[] points, NamedEntries<Zone> zones)
    {
        var total = 0.0;
        var isPartial = false;
        HashSet<string> supplied = new(StringComparer.Ordinal);
        foreach (ref readonly var point in points.AsSpan())
        {
            if (point.Point is null) isPartial = true;
            if (point.Point is not Nozzle nozzle) continue;
            total += nozzle.Share ?? 0;
            if (nozzle.Zone is { } zone) supplied.Add(zone);
        }
        foreach (var zone in zones.Entries)
        {
            total += zone.Share ?? 0;
            if (zone.Share is not null && !isPartial && !supplied.Contains(zone.Id))
                context.Faults.Add(root[DocumentField.Zones].GetProperty(zone.Id), "share", $"read {zone.Share}: {Said.Name(zone.Id)} wants a share and no nozzle names it as its zone");
        }
        if (!(total > 1 + Slack)) return;
        var at = root.Has(DocumentField.Zones) ? DocumentField.Zones : DocumentField.Points;
        context.Faults.Add(root[at], $"the shares of zones and nozzles add up to {total:0.#########}: 1 is the most");
    }
}

namespace FlowCalc.Flows;

/// <summary>What a zone gets.</summary>
/// <param name="Zone">Id of the zone.</param>
/// <param name="Share">Part of the whole flow, 0 to 1.</param>
/// <param name="WantedShare">Its own wanted share, or else the sum of what its nozzles should get, 0 to 1.</param>
public sealed record ZoneShare(string Zone, double Share, double WantedShare)
{
    /// <summary>Share over wanted share, less 1; null where nothing is wanted.</summary>
    public double? Deviation => WantedShare > 0 ? Share / WantedShare - 1 : null;
}

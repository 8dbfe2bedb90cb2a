namespace FlowCalc.Api.Flow;

/// <summary>What a zone gets.</summary>
/// <param name="Id">Its name in the document.</param>
/// <param name="Share">Part of the whole flow, 0 to 1.</param>
/// <param name="WantedShare">Part that its nozzles should get, 0 to 1.</param>
/// <param name="Deviation">Share over wanted share, less 1; null where nothing is wanted.</param>
public readonly record struct ZoneAnswer(string Id, double Share, double WantedShare, double? Deviation);

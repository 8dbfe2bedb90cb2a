using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Size;

/// <summary>What a nozzle gets with the sizes.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Pressure">Gauge pressure at it.</param>
/// <param name="MassFlow">Its flow.</param>
/// <param name="Share">Part of the whole flow, 0 to 1.</param>
/// <param name="WantedShare">The part that the document as it was sent wants of it.</param>
/// <param name="Deviation">Share over wanted share, less 1; null where nothing is wanted.</param>
/// <param name="DeviationBefore">The same as the layout was sent; null where nothing is wanted or there was no flow.</param>
public sealed record SizedNozzleAnswer(string Id, Quantity Pressure, Quantity MassFlow, double Share, double WantedShare, double? Deviation, double? DeviationBefore);

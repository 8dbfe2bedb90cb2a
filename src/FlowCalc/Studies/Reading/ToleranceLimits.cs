namespace FlowCalc.Studies.Reading;

/// <summary>How much a study of tolerances may ask.</summary>
/// <param name="FlowSamples">Most samples of a steady flow.</param>
/// <param name="DischargeSamples">Most samples of a discharge.</param>
/// <param name="Numbers">Most figures of all samples together, since all of them are kept: eight bytes each.</param>
public sealed record ToleranceLimits(int FlowSamples, int DischargeSamples, long Numbers);

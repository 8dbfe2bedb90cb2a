using FlowCalc.Studies.Reading;

namespace FlowCalc.Workbench.Asking;

/// <summary>How much the studies of a page may ask; the host sets it, so that a page and the calls of the service are bounded alike.</summary>
/// <param name="SizeStock">Most tubes, and most other things together, of a stock to choose sizes from.</param>
/// <param name="SizeWork">Work after which a search for sizes ends with what it has.</param>
/// <param name="Tolerance">Samples and figures of a study of tolerances.</param>
public sealed record StudyLimits(int SizeStock, int SizeWork, ToleranceLimits Tolerance);

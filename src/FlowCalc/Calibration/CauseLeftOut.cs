using FlowCalc.Layouts;

namespace FlowCalc.Calibration;

/// <summary>A cause that has no answer.</summary>
/// <param name="Kind">The cause.</param>
/// <param name="Run">Index of the run in <see cref="Layout.Runs"/>; −1 where it is no run.</param>
/// <param name="Why">Why, a sentence.</param>
public sealed record CauseLeftOut(CauseKind Kind, int Run, string Why);

using System.Collections.Immutable;
using FlowCalc.Layouts;

namespace FlowCalc.Calibration;

/// <summary>How well one cause explains the readings.</summary>
/// <param name="Kind">The cause.</param>
/// <param name="Run">Index of the run in <see cref="Layout.Runs"/>; −1 where it is no run.</param>
/// <param name="Unknowns">What was found; empty for the layout as drawn.</param>
/// <param name="Predicted">What each reading would have been, in the order and units of <see cref="Measured.Readings"/>.</param>
/// <param name="ChiSquare">Sum of the squares of the residuals, each over its standard uncertainty.</param>
/// <param name="DegreesOfFreedom">Readings less unknowns.</param>
/// <param name="Chance">Chance that readings scatter as much or more where this cause is the right one; null without a degree of freedom.</param>
/// <param name="Score">What causes are ranked by, less is better; see <see cref="CauseScore"/>.</param>
/// <param name="FlowLost">Of a run the part of its flow that it loses in the test, 0 to 1; null for every other cause.</param>
public sealed record CauseFit(
    CauseKind Kind, int Run, ImmutableArray<FittedUnknown> Unknowns, ImmutableArray<double> Predicted, double ChiSquare, int DegreesOfFreedom, double? Chance, double Score, double? FlowLost);

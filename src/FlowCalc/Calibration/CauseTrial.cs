using System.Collections.Immutable;
using FlowCalc.Layouts;

namespace FlowCalc.Calibration;

/// <summary>A cause to be fitted.</summary>
/// <param name="Kind">The cause.</param>
/// <param name="Run">Index of the run; −1 where it is no run.</param>
/// <param name="Unknowns">Its unknowns.</param>
/// <param name="Predict">What each reading would be at sizes of the unknowns, SI.</param>
/// <param name="FlowLost">Of a run the part of its flow that is lost at a size; null for every other cause.</param>
sealed record CauseTrial(CauseKind Kind, int Run, ImmutableArray<Unknown> Unknowns, Func<double[], double[]> Predict, Func<double, double>? FlowLost = null);

using UnitsNet;

namespace FlowCalc.Coverage;

/// <summary>The flow of a nozzle: of a discharge the least and greatest over its cases, each the mean while the first 95 % of its agent come out.</summary>
/// <param name="Least">The least.</param>
/// <param name="Most">The greatest.</param>
public readonly record struct FlowSpan(VolumeFlow Least, VolumeFlow Most);

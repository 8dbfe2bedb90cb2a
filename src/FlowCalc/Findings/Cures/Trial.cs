using FlowCalc.Flows;

namespace FlowCalc.Findings.Cures;

/// <summary>A change that was solved.</summary>
/// <param name="Change">The change.</param>
/// <param name="Flow">The flow with it.</param>
/// <param name="Worst">The badness of the worst nozzle with it; see <see cref="Imbalance.Badness"/>.</param>
/// <param name="WorstNozzle">That nozzle, as an index of the flow's nozzles.</param>
sealed record Trial(LayoutChange Change, FlowResult Flow, double Worst, int WorstNozzle);

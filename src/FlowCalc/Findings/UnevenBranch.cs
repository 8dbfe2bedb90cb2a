namespace FlowCalc.Findings;

/// <summary>A leg of a tee or junction whose nozzles fall short.</summary>
/// <param name="Leg">The run by which it leaves.</param>
/// <param name="Starved">Its starved nozzles, as indices of the flow's nozzles, in the document's order.</param>
/// <param name="Worst">The starved nozzle that falls shortest.</param>
/// <param name="Dearest">The run in it that costs its nozzles most.</param>
/// <param name="Loss">Loss from the parting point to its nozzles, on average, Pa.</param>
/// <param name="PeerLoss">The same for the nozzles of the other legs; null where there are none.</param>
sealed record UnevenBranch(int Leg, List<int> Starved, int Worst, int Dearest, double Loss, double? PeerLoss);

namespace FlowCalc.Discharge;

/// <summary>The moment at which liquid stands at every nozzle and every closed end that it reaches: from here a discharge can be followed again with other choices of the model, which hardly matter before.</summary>
/// <param name="Time">When, s.</param>
/// <param name="State">The state.</param>
/// <param name="Line">How far liquid and gas have come.</param>
/// <param name="Arrival">When liquid came to each nozzle, s.</param>
/// <param name="Thresholds">When the masses asked for were out, s; NaN where they are not yet.</param>
/// <param name="PeakFlow">Greatest flow out of the bottles so far, kg/s.</param>
internal sealed record FilledLine(double Time, double[] State, LineState Line, double[] Arrival, double[] Thresholds, double PeakFlow);

using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Flow;

/// <summary>The pressure at a point.</summary>
/// <param name="Id">Id of the point.</param>
/// <param name="Pressure">Gauge total pressure at the end of the run that feeds it, before the point's own loss; of the supply, after the bottle's outlet.</param>
public readonly record struct PointAnswer(string Id, Quantity Pressure);

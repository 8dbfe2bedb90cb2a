using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>What a bottle was found to weigh.</summary>
/// <param name="Stamped">Gross mass that is stamped on it; null where the empty bottle and its fill say it.</param>
/// <param name="Gross">Gross mass that was found, with the same caps, gauge and straps.</param>
/// <param name="Step">Step of the scale; null where not given.</param>
/// <param name="On">When; null where not given.</param>
public sealed record Weighing(Mass? Stamped, Mass Gross, Mass? Step, ServiceDate? On);

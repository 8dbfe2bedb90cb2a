using FlowCalc.Layouts;

namespace FlowCalc.Studies.Sizing;

/// <summary>A tube of the stock.</summary>
/// <param name="Tube">The tube; its name is how the document calls it.</param>
/// <param name="CostPerMetre">What a metre costs, 0 or more, in any one currency; null where not given.</param>
/// <param name="MassPerMetre">What a metre weighs, kg/m, over 0; null where not known.</param>
public sealed record TubeOption(Tube Tube, double? CostPerMetre, double? MassPerMetre);

using FlowCalc.Layouts;
using FlowCalc.Networks;

namespace FlowCalc.Flows;

/// <summary>A solved line of a liquid.</summary>
/// <param name="Line">The line as it was solved.</param>
/// <param name="State">The solution.</param>
/// <param name="Path">The liquid.</param>
/// <param name="Reservoir">Absolute pressure in the bottle or at the held supply, Pa.</param>
/// <param name="Throttled">Pressure that a regulator takes, Pa; over 0 the line has no other outlet.</param>
internal sealed record SolvedLiquid(LayoutNetwork Line, SteadyState State, LiquidPath Path, double Reservoir, double Throttled);

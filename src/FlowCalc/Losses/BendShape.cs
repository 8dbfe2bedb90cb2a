namespace FlowCalc.Losses;

/// <summary>What a smooth bend's geometry contributes to its loss; made once per bend by <see cref="SmoothBend.Shape"/>.</summary>
/// <param name="PerFriction">Part of the turbulent loss coefficient that goes with the friction factor, dimensionless.</param>
/// <param name="Constant">Part of the turbulent loss coefficient that does not, dimensionless.</param>
/// <param name="ArcOverBore">Length of the arc's centre line over bore, dimensionless.</param>
/// <param name="RadiusOverBore">Centre-line radius over bore, dimensionless.</param>
public readonly record struct BendShape(double PerFriction, double Constant, double ArcOverBore, double RadiusOverBore);

namespace FlowCalc.Losses;

/// <summary>Loss of a fitting that is tighter than its tube, on the velocity head in the tube: K = Constant + PerFriction · f.</summary>
/// <param name="Constant">Part that does not go with friction, dimensionless.</param>
/// <param name="PerFriction">Factor of the friction factor in the fitting's own bore, dimensionless.</param>
public readonly record struct ReducedBoreLoss(double Constant, double PerFriction);

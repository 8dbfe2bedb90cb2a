using FlowCalc.Losses;

namespace FlowCalc.Tests.Published.Losses;

/// <summary>A straight tube composed from the friction functions, for worked examples; SI throughout.</summary>
internal static class StraightTube
{
    public const double Gravity = HydrostaticRise.StandardGravity;

    public static double Velocity(double volumeFlow, double bore) => volumeFlow / (Math.PI / 4 * bore * bore);

    public static double VelocityHead(double volumeFlow, double bore) => Velocity(volumeFlow, bore) * Velocity(volumeFlow, bore) / (2 * Gravity);

    public static double Reynolds(double volumeFlow, double bore, double kinematicViscosity) => Velocity(volumeFlow, bore) * bore / kinematicViscosity;

    public static double PressureDrop(double volumeFlow, double bore, double length, double relativeRoughness, double density, double viscosity)
    {
        var reynolds = Reynolds(volumeFlow, bore, viscosity / density);
        return length * viscosity * viscosity / (2 * density * bore * bore * bore) * DarcyFriction.PressureGroup(reynolds, relativeRoughness).Group;
    }

    public static double HeadLoss(double volumeFlow, double bore, double length, double relativeRoughness, double kinematicViscosity)
    {
        const double density = 1000; // any: it cancels
        return PressureDrop(volumeFlow, bore, length, relativeRoughness, density, density * kinematicViscosity) / (density * Gravity);
    }
}

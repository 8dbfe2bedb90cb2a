using System.Collections.Immutable;
using FlowCalc.Layouts;
namespace FlowCalc.Bottles;
/// <summary>Placeholder.</summary>
internal sealed record BottlePlace(LiquidLevel? Level, double Gravity, double InletHeight, double OutletHeight, double VolumeBelowInlet, bool DrawsAll, double Radius, double Length, ImmutableArray<Assumption> Assumptions)
{
    public static BottlePlace Of(Bottle bottle, Direction gravity)
    {
        var radius = bottle.Shape is { } s ? s.Diameter.Meters / 2 : Math.Cbrt(bottle.Volume.CubicMeters / (6 * Math.PI));
        var length = bottle.Volume.CubicMeters / (Math.PI * radius * radius);
        var up = -gravity.Z;
        return new(up == 0 ? null : new LiquidLevel(radius, length, new(0, 0, 1)), 1, 0, length, 0, bottle.Outlet is null, radius, length, []);
    }
}

using FlowCalc.Bottles;

namespace FlowCalc.Discharge;

/// <summary>Heat that a bottle's shell holds.</summary>
internal static class BottleShell
{
    /// <summary>Heat capacity of the whole shell.</summary>
    /// <param name="wall">The shell; null where it is not given.</param>
    /// <param name="area">Its inner area, m².</param>
    /// <returns>J/K; infinite, a shell that keeps its temperature, where wall or metal are not known.</returns>
    public static double HeatCapacity(BottleWall? wall, double area) =>
        Metal.Of(wall?.Material, metal => metal.HeatPerVolume) is { } perVolume ? perVolume * wall!.Thickness.Meters * area : double.PositiveInfinity;
}

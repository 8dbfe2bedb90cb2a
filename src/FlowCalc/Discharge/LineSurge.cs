using FlowCalc.Layouts;
using FlowCalc.Losses;
using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>The bound of the pressure rise when the front of the liquid meets a nozzle.</summary>
public static class LineSurge
{
    /// <summary>The bound for a tube: Joukowsky with the wave speed of water in its wall; in a rigid tube where wall or metal are not known.</summary>
    /// <param name="tube">The tube before the nozzle.</param>
    /// <param name="density">Density of the liquid, kg/m³.</param>
    /// <param name="slowed">By how much the liquid is slowed down, m/s.</param>
    public static Pressure Of(Tube tube, double density, double slowed)
    {
        ArgumentNullException.ThrowIfNull(tube);
        var bore = tube.Bore.Meters;
        var wall = tube.OutsideDiameter is { } outside ? 0.5 * (outside.Meters - bore) : double.PositiveInfinity;
        var speed = WaveSpeed.Of(WaveSpeed.BulkModulusOfWater, density, bore, wall > 0 ? wall : double.PositiveInfinity, Metal.Of(tube.Material, metal => metal.Modulus) ?? double.PositiveInfinity);
        return Pressure.FromPascals(WaveSpeed.Surge(density, speed, slowed));
    }
}

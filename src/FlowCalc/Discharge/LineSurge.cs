using FlowCalc.Layouts;
using FlowCalc.Losses;
using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>The bound of the pressure rise when the front of the liquid meets a nozzle.</summary>
public static class LineSurge
{
    // Young's modulus, Pa, handbook values from memory.
    static readonly (string Word, double Modulus)[] Materials =
        [("alumin", 70e9), ("stainless", 195e9), ("steel", 205e9), ("copper", 120e9), ("brass", 105e9), ("cunifer", 150e9), ("nickel", 150e9)];

    /// <summary>The bound for a tube: Joukowsky with the wave speed of water in its wall; in a rigid tube where wall or metal are not known.</summary>
    /// <param name="tube">The tube before the nozzle.</param>
    /// <param name="density">Density of the liquid, kg/m³.</param>
    /// <param name="slowed">By how much the liquid is slowed down, m/s.</param>
    public static Pressure Of(Tube tube, double density, double slowed)
    {
        ArgumentNullException.ThrowIfNull(tube);
        var bore = tube.Bore.Meters;
        var wall = tube.OutsideDiameter is { } outside ? 0.5 * (outside.Meters - bore) : double.PositiveInfinity;
        var speed = WaveSpeed.Of(WaveSpeed.BulkModulusOfWater, density, bore, wall > 0 ? wall : double.PositiveInfinity, Modulus(tube.Material));
        return Pressure.FromPascals(WaveSpeed.Surge(density, speed, slowed));
    }

    static double Modulus(string? material)
    {
        if (material is not null)
            foreach (var (word, modulus) in Materials)
                if (material.Contains(word, StringComparison.OrdinalIgnoreCase)) return modulus;
        return double.PositiveInfinity;
    }
}

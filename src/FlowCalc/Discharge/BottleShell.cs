using FlowCalc.Bottles;

namespace FlowCalc.Discharge;

/// <summary>Heat that a bottle's shell holds.</summary>
internal static class BottleShell
{
    // Density times specific heat near 20 °C, J/(m³·K), handbook values from memory.
    static readonly (string Word, double PerVolume)[] Metals =
    [
        ("alumin", 2700 * 900.0), ("stainless", 7900 * 500.0), ("steel", 7850 * 480.0), ("titanium", 4500 * 520.0),
    ];

    /// <summary>Heat capacity of the whole shell.</summary>
    /// <param name="wall">The shell; null where it is not given.</param>
    /// <param name="area">Its inner area, m².</param>
    /// <returns>J/K; infinite, a shell that keeps its temperature, where wall or metal are not known.</returns>
    public static double HeatCapacity(BottleWall? wall, double area)
    {
        if (wall is null) return double.PositiveInfinity;
        foreach (var (word, perVolume) in Metals)
            if (wall.Material.Contains(word, StringComparison.OrdinalIgnoreCase)) return perVolume * wall.Thickness.Meters * area;
        return double.PositiveInfinity;
    }
}

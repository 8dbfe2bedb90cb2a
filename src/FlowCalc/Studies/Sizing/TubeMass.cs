using FlowCalc.Layouts;

namespace FlowCalc.Studies.Sizing;

/// <summary>What a metre of tube weighs.</summary>
public static class TubeMass
{
    // kg/m³, handbook values from memory. What is stainless is named before steel, whose word it may hold as well.
    static readonly (string Word, double Density)[] Metals =
        [("alumin", 2700), ("stainless", 7900), ("steel", 7850), ("titanium", 4500), ("cunifer", 8900), ("copper-nickel", 8900), ("copper", 8940), ("brass", 8500)];

    /// <summary>From its diameters and the metal that its material names.</summary>
    /// <param name="tube">The tube.</param>
    /// <returns>kg/m; null where the outside diameter or the metal is not known.</returns>
    public static double? PerMetre(Tube tube)
    {
        ArgumentNullException.ThrowIfNull(tube);
        if (tube.OutsideDiameter is not { } outside || DensityOf(tube) is not { } density) return null;
        return density * Math.PI / 4 * (outside.Meters * outside.Meters - tube.Bore.Meters * tube.Bore.Meters);
    }

    /// <summary>Density of the metal that a tube's material names, kg/m³; null where none is known.</summary>
    internal static double? DensityOf(Tube tube)
    {
        if (tube.Material is not { } material) return null;
        foreach (var (word, density) in Metals)
            if (material.Contains(word, StringComparison.OrdinalIgnoreCase)) return density;
        return null;
    }
}

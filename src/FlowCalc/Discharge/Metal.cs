namespace FlowCalc.Discharge;

/// <summary>A metal that a free text may name, with what is known of it.</summary>
/// <param name="Word">Part of a text that names it.</param>
/// <param name="Modulus">Young's modulus, Pa; null where it is not kept.</param>
/// <param name="HeatPerVolume">Density times specific heat near 20 °C, J/(m³·K); null where it is not kept.</param>
internal sealed record Metal(string Word, double? Modulus, double? HeatPerVolume)
{
    // Handbook values from memory. What is stainless is named before steel, whose word it may hold as well.
    static readonly Metal[] All =
    [
        new("alumin", 70e9, 2700 * 900.0), new("stainless", 195e9, 7900 * 500.0), new("steel", 205e9, 7850 * 480.0), new("titanium", null, 4500 * 520.0),
        new("copper", 120e9, null), new("brass", 105e9, null), new("cunifer", 150e9, null), new("nickel", 150e9, null),
    ];

    /// <summary>A figure of the metal that a text names.</summary>
    /// <param name="text">Free text such as <c>aluminium 6061</c>; null for none.</param>
    /// <param name="figure">Which figure.</param>
    /// <returns>Null where no metal is named of which that figure is kept.</returns>
    public static double? Of(string? text, Func<Metal, double?> figure)
    {
        if (text is null) return null;
        foreach (var metal in All)
            if (figure(metal) is { } known && text.Contains(metal.Word, StringComparison.OrdinalIgnoreCase)) return known;
        return null;
    }
}

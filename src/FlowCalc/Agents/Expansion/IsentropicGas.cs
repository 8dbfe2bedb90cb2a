namespace FlowCalc.Agents;

/// <summary>Expansion of a gas at constant entropy with a constant exponent.</summary>
internal static class IsentropicGas
{
    /// <summary>Specific volume, m³/kg, and ∫v dp from the pressure up to the start, J/kg.</summary>
    /// <param name="volume">Specific volume at the start, m³/kg.</param>
    /// <param name="start">Absolute pressure at the start, Pa.</param>
    /// <param name="exponent">Exponent κ of p·v^κ, over 1.</param>
    /// <param name="pressure">Absolute pressure, Pa.</param>
    public static (double Volume, double Work) At(double volume, double start, double exponent, double pressure)
    {
        var part = Math.Pow(pressure / start, 1 / exponent);
        return (volume / part, exponent / (exponent - 1) * volume * (start - pressure / part));
    }
}

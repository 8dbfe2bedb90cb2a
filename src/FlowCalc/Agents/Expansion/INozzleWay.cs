namespace FlowCalc.Agents;

/// <summary>Expansion from a total pressure in a nozzle.</summary>
internal interface INozzleWay
{
    /// <summary>Specific volume in equilibrium at the entropy of the start, m³/kg, and ∫v dp from there to the start, J/kg.</summary>
    /// <param name="pressure">Absolute pressure, Pa, at most that of the start.</param>
    (double Volume, double Work) Equilibrium(double pressure);

    /// <summary>The same while no liquid boils: the start's gas expands as a gas, its liquid keeps its volume.</summary>
    /// <param name="pressure">Absolute pressure, Pa, at most that of the start.</param>
    (double Volume, double Work) Frozen(double pressure);

    /// <summary>Whether equilibrium and frozen expansion differ.</summary>
    bool HasDelay { get; }

    /// <summary>Part N of the equilibrium's boiling that a short nozzle gives time for, 0 to 1; 1 where there is no liquid.</summary>
    /// <param name="ratio">Critical pressure over total pressure of the equilibrium expansion.</param>
    double Part(double ratio);

    /// <summary>Part that boils even where nothing has time to, 0 to 1: over 0 beside the critical point, where liquid and vapour are hardly two.</summary>
    double LeastPart => 0;

    /// <summary>The greatest flux of a gas, from its speed of sound, without a search.</summary>
    /// <param name="ambient">Absolute pressure outside, Pa.</param>
    /// <param name="hint">The answer nearby; this one's on return.</param>
    /// <param name="answer">Flux, kg/(m²·s), and pressure in the throat, Pa.</param>
    /// <returns>False where there is no such way.</returns>
    bool TrySonic(double ambient, ref NozzleHint hint, out (double Flux, double Throat) answer)
    {
        answer = default;
        return false;
    }
}

namespace FlowCalc.Quantities;

/// <summary>What a quantity measures; it decides which units fit.</summary>
public enum QuantityKind
{
    /// <summary>A length; SI base m.</summary>
    Length,

    /// <summary>An area; SI base m².</summary>
    Area,

    /// <summary>A volume; SI base m³.</summary>
    Volume,

    /// <summary>A pressure, gauge unless its unit says absolute; SI base Pa.</summary>
    Pressure,

    /// <summary>A mass; SI base kg.</summary>
    Mass,

    /// <summary>A density; SI base kg/m³.</summary>
    Density,

    /// <summary>A volume in a time; SI base m³/s.</summary>
    VolumeFlow,

    /// <summary>A mass in a time; SI base kg/s.</summary>
    MassFlow,

    /// <summary>A nozzle's flow over the root of its pressure, for a liquid of 1000 kg/m³; SI base m³/(s·√Pa).</summary>
    KFactor,

    /// <summary>A valve's Kv or Cv: its flow over the root of its pressure drop, for a liquid of 1000 kg/m³; SI base m³/(s·√Pa).</summary>
    FlowCoefficient,

    /// <summary>A dynamic viscosity; SI base Pa·s.</summary>
    Viscosity,

    /// <summary>A temperature on a scale (not a difference); SI base K.</summary>
    Temperature,

    /// <summary>A span of time; SI base s.</summary>
    Time,

    /// <summary>A plane angle; SI base rad.</summary>
    Angle,

    /// <summary>A force; SI base N.</summary>
    Force,

    /// <summary>An electric current; SI base A.</summary>
    Current,

    /// <summary>An electric voltage; SI base V.</summary>
    Voltage,

    /// <summary>An electric resistance; SI base Ω.</summary>
    Resistance,

    /// <summary>A speed; SI base m/s.</summary>
    Speed,

    /// <summary>An acceleration; SI base m/s².</summary>
    Acceleration,

    /// <summary>A stress or a strength of a material, which knows no gauge or absolute; SI base Pa.</summary>
    Stress,
    /// <summary>An electric capacitance; SI base F.</summary>
    Capacitance,

    /// <summary>An energy; SI base J.</summary>
    Energy,

    /// <summary>A volume flow over the area that it wets; SI base m³/s/m², which is m/s.</summary>
    WettingRate,
}

namespace FlowCalc.Circuits;

/// <summary>What gives the current.</summary>
public enum SourceKind
{
    /// <summary>A battery.</summary>
    Battery,

    /// <summary>A power pack with a steady output.</summary>
    PowerPack,

    /// <summary>A charged capacitor.</summary>
    Capacitor,
}

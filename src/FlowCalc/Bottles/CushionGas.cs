namespace FlowCalc.Bottles;

/// <summary>The gas that drives a liquid out of its bottle.</summary>
public enum CushionGas
{
    /// <summary>Nitrogen, the usual cushion and the default.</summary>
    Nitrogen,

    /// <summary>Argon.</summary>
    Argon,

    /// <summary>Dry air.</summary>
    Air,
}

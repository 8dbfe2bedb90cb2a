namespace FlowCalc.Circuits;

/// <summary>What standard a wire's cross-section is of.</summary>
public enum CableKind
{
    /// <summary>Flexible plain copper, IEC 60228 class 5.</summary>
    Flexible,

    /// <summary>Flexible tinned copper, IEC 60228 class 5.</summary>
    Tinned,

    /// <summary>Cable of road vehicles, ISO 6722-1.</summary>
    RoadVehicle,
}

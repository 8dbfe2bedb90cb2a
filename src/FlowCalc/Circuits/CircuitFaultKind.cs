namespace FlowCalc.Circuits;

/// <summary>What is wrong with a circuit that was right.</summary>
public enum CircuitFaultKind
{
    /// <summary>A part does not conduct.</summary>
    Open,

    /// <summary>A node touches the chassis.</summary>
    Chassis,

    /// <summary>A joint or a contact has the resistance of corrosion besides its own.</summary>
    Corroded,
}

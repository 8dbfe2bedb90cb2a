namespace FlowCalc.Layouts;

/// <summary>Where the system is used; picks the default limits.</summary>
public enum Application
{
    /// <summary>None named: general limits.</summary>
    General,

    /// <summary>A competition vehicle.</summary>
    Motorsport,

    /// <summary>The engine space of a boat.</summary>
    MarineEngineSpace,

    /// <summary>A machine or its enclosure.</summary>
    Machine,

    /// <summary>An electrical cabinet.</summary>
    ElectricalCabinet,
}

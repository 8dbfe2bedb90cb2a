namespace FlowCalc.Discharge;

/// <summary>What keeps a case from being answered.</summary>
public enum DischargeFailureKind
{
    /// <summary>Colder than the agent's freezing point.</summary>
    BelowFreezing,

    /// <summary>Outside the data of agent or cushion gas.</summary>
    OutsideData,

    /// <summary>The liquid would boil at the surroundings' pressure.</summary>
    Boiling,

    /// <summary>The liquid alone fills the bottle: no cushion is left and its pressure is not known.</summary>
    LiquidFull,

    /// <summary>The bottle's pressure is not above the surroundings', or below what opens its outlet.</summary>
    NoPressure,

    /// <summary>The computation did not come to an end.</summary>
    NotSolved,
}

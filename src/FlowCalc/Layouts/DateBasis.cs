namespace FlowCalc.Layouts;

/// <summary>The date that an interval of upkeep counts from.</summary>
public enum DateBasis
{
    /// <summary>When the bottle was made.</summary>
    Manufactured,

    /// <summary>When it was last filled or serviced; when it was made where it never was.</summary>
    LastService,

    /// <summary>When it was last tested under pressure; when it was made where it never was.</summary>
    LastTest,

    /// <summary>A date of the rule's own, such as that of a battery.</summary>
    Own,
}

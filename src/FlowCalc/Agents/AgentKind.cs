namespace FlowCalc.Agents;

/// <summary>How an agent is kept and how it flows.</summary>
public enum AgentKind
{
    /// <summary>A liquid that a gas drives out and that stays liquid.</summary>
    Liquid,

    /// <summary>A gas kept at high pressure, without liquid.</summary>
    InertGas,

    /// <summary>A gas that is liquid in its bottle and drives itself out.</summary>
    LiquefiedGas,

    /// <summary>A liquefied gas that nitrogen drives out.</summary>
    LiquefiedUnderNitrogen,
}

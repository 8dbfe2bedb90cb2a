using FlowCalc.Agents;

namespace FlowCalc.Api.Catalogue;

/// <summary>Words for kinds of agents.</summary>
internal static class KindWord
{
    /// <summary>The word of a kind.</summary>
    public static string Of(AgentKind kind) => kind switch
    {
        AgentKind.Liquid => "liquid",
        AgentKind.InertGas => "inert-gas",
        AgentKind.LiquefiedGas => "liquefied-gas",
        AgentKind.LiquefiedUnderNitrogen => "liquefied-under-nitrogen",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind."),
    };
}

namespace FlowCalc.Discharge;

/// <summary>What leaves the bottle and what the line holds.</summary>
internal enum ExpandingStage
{
    /// <summary>The outlet draws liquid, or a fluid of one phase.</summary>
    Liquid,

    /// <summary>The outlet draws gas; the line still holds what came before.</summary>
    Sweep,

    /// <summary>Gas in bottle and line.</summary>
    Gas,
}

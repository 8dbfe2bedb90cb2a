namespace FlowCalc.Workbench.Desks;

/// <summary>What pointing at a thing on the drawing does.</summary>
public enum Tool
{
    /// <summary>It is chosen, and its fields are shown.</summary>
    Choose,

    /// <summary>A nozzle is added there.</summary>
    AddNozzle,

    /// <summary>It is taken away.</summary>
    Remove,
}

namespace FlowCalc.Workbench.Drawings;

/// <summary>What the colours of a drawing tell.</summary>
public enum DrawingColour
{
    /// <summary>The flow that each run carries and each nozzle gives.</summary>
    Flow,

    /// <summary>The pressure at the end of each run.</summary>
    Pressure,

    /// <summary>The part of the whole flow that each run carries; at nozzles how far the share is from the wanted one.</summary>
    Share,

    /// <summary>Nothing: the layout alone.</summary>
    None,
}

namespace FlowCalc.Workbench.Drawings;

/// <summary>How a layout is laid on the sheet.</summary>
public enum DrawingView
{
    /// <summary>As a tree from the supply on the left to the nozzles on the right, whatever the places; lengths are not to scale.</summary>
    Tree,

    /// <summary>In space, in isometric projection; needs a place of every point.</summary>
    Isometric,
}

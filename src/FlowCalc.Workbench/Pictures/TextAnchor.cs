namespace FlowCalc.Workbench.Pictures;

/// <summary>Which part of a text stands at its place.</summary>
public enum TextAnchor
{
    /// <summary>Its start.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its end.</summary>
    End,
}

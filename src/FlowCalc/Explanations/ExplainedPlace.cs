namespace FlowCalc.Explanations;

/// <summary>What a step of an explanation belongs to.</summary>
public enum ExplainedPlace
{
    /// <summary>The bottle, or the supply held at a pressure.</summary>
    Supply,

    /// <summary>A run.</summary>
    Run,

    /// <summary>A point at which runs meet, or a nozzle.</summary>
    Point,

    /// <summary>A zone.</summary>
    Zone,

    /// <summary>All runs in one tube, as that tube is ordered and cut.</summary>
    Tube,

    /// <summary>A layout as a whole.</summary>
    Layout,

    /// <summary>An input that varies.</summary>
    Input,

    /// <summary>A finding or a verdict.</summary>
    Finding,
}

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
}

namespace FlowCalc.Findings;

/// <summary>How much a finding matters, mildest first; the worst of all is the verdict.</summary>
public enum Severity
{
    /// <summary>Nothing was found.</summary>
    Pass,

    /// <summary>It informs.</summary>
    Note,

    /// <summary>It needs a person to look.</summary>
    Warn,

    /// <summary>It stops.</summary>
    Fail,
}

namespace FlowCalc.Studies.Tolerance;

/// <summary>Which answer a study asks of every sample.</summary>
public enum StudiedAnswer
{
    /// <summary>The steady flow.</summary>
    Flow,

    /// <summary>The discharge through time.</summary>
    Discharge,
}

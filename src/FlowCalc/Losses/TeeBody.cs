namespace FlowCalc.Losses;

/// <summary>How a tee is made inside.</summary>
public enum TeeBody
{
    /// <summary>Welded, brazed, push-in or compression body with a clear bore: the correlations' own case.</summary>
    Smooth,

    /// <summary>Drilled or threaded body of small size, which loses more.</summary>
    Threaded,
}

namespace FlowCalc.Routes;

/// <summary>How many steps the searches of one cut list may still take: counted, not timed, so that every machine gives the same list.</summary>
sealed class SearchEffort
{
    const int All = 3_000_000;

    /// <summary>Steps left.</summary>
    public int Left { get; set; } = All;
}

namespace FlowCalc.Explanations;

/// <summary>What a step belongs to, as an answer names it.</summary>
public static class ExplainedPlaceWords
{
    /// <summary>The word of a place.</summary>
    /// <param name="place">The place.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="place"/> is no member of its enumeration.</exception>
    public static string Of(ExplainedPlace place) => place switch
    {
        ExplainedPlace.Supply => "supply",
        ExplainedPlace.Run => "run",
        ExplainedPlace.Point => "point",
        ExplainedPlace.Zone => "zone",
        ExplainedPlace.Tube => "tube",
        ExplainedPlace.Layout => "layout",
        ExplainedPlace.Input => "input",
        ExplainedPlace.Finding => "finding",
        _ => throw new ArgumentOutOfRangeException(nameof(place), place, "Not a place."),
    };
}

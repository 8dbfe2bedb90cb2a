namespace FlowCalc.Layouts;

/// <summary>How much a document may hold and how much is said about it.</summary>
public sealed record LayoutReaderOptions
{
    /// <summary>Most points, and most runs, that are read; 1 or more.</summary>
    public int MaximumPoints { get; init; } = 100_000;

    /// <summary>Most faults that are listed; one more then states how many there are besides. 1 or more.</summary>
    public int MaximumFaults { get; init; } = 1_000;

    /// <summary>Deepest nesting of objects and arrays; deeper text counts as no JSON. 1 to 1000.</summary>
    public int MaximumDepth { get; init; } = 64;

    /// <summary>Whether a supply held at a pressure is a fault, as for what asks for a discharge.</summary>
    public bool NeedsBottle { get; init; }

    /// <summary>Whether a document without a mount is a fault, as for what asks for its loads.</summary>
    public bool NeedsMount { get; init; }
    /// <summary>The day that is asked for: a later date in the document's service is a fault. Null where no day is, and then none is one.</summary>
    public DateOnly? Today { get; init; }
}

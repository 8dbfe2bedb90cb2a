using System.Collections.Immutable;

namespace FlowCalc.Layouts;

/// <summary>What the document says of a bottle's age and upkeep. No flow hangs on it.</summary>
public sealed record ServiceBook
{
    /// <summary>When the bottle was made; null where not given.</summary>
    public ServiceDate? Manufactured { get; init; }

    /// <summary>When it was last filled or serviced; null where not given.</summary>
    public ServiceDate? LastService { get; init; }

    /// <summary>When it was last tested under pressure; null where not given.</summary>
    public ServiceDate? LastTest { get; init; }

    /// <summary>The document's own rules; one with the name of a usual rule stands for it.</summary>
    public ImmutableArray<ServiceRule> Rules { get; init; } = [];

    /// <summary>What it was found to weigh; null where not given.</summary>
    public Weighing? Weighing { get; init; }

    /// <summary>What its gauge showed; null where not given.</summary>
    public GaugeReading? Gauge { get; init; }
}

using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>A fitting in a run. It has a loss coefficient, a flow coefficient, or a bore with a length; none of them for a fitting as wide as its tube.</summary>
public sealed record Fitting
{
    /// <summary>The kind of a fitting that turns sharply.</summary>
    public const string Elbow = "elbow";

    /// <summary>The kind of a straight joint of two tubes through a panel.</summary>
    public const string BulkheadUnion = "bulkhead-union";

    /// <summary>Its name among the document's fittings or in the catalogue; null where it is described in place.</summary>
    public string? Name { get; init; }

    /// <summary>Kind in free text; <c>union</c>, <c>bulkhead-union</c> and <c>elbow</c> have a meaning to the engine.</summary>
    public required string Kind { get; init; }

    /// <summary>Loss coefficient on the tube's velocity head, 0 or more, dimensionless; null where not given.</summary>
    public double? LossCoefficient { get; init; }

    /// <summary>Flow coefficient, m³/(s·√Pa) at 1000 kg/m³, over 0; null where not given.</summary>
    public double? Kv { get; init; }

    /// <summary>Its own bore; null where not given.</summary>
    public Length? Bore { get; init; }

    /// <summary>Length of its bore; null where not given.</summary>
    public Length? Length { get; init; }

    /// <summary>Change of direction of an elbow; null for other kinds.</summary>
    public Angle? Angle { get; init; }

    /// <summary>How deep a tube goes in; null where not given.</summary>
    public Length? Insertion { get; init; }

    /// <summary>Straight tube that it grips beside the insertion; null where not given.</summary>
    public Length? Grip { get; init; }

    /// <summary>From its middle to where either tube stops; null where not given.</summary>
    public Length? CentreToStop { get; init; }

    /// <summary>Thread of a bulkhead union that goes through the panel; null where not given and for other kinds.</summary>
    public Length? Thread { get; init; }

    /// <summary>Thickness of the panel that a bulkhead union goes through, washers with it; null where not given and for other kinds.</summary>
    public Length? Panel { get; init; }

    /// <summary>Thickest panel that a bulkhead union takes, washers with it; null where not given and for other kinds.</summary>
    public Length? PanelGrip { get; init; }
}

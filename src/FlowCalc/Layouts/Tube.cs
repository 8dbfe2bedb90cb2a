using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>A size of tube.</summary>
public sealed record Tube
{
    /// <summary>Its name among the document's tubes or in the catalogue; null for a bore given in the run itself.</summary>
    public string? Name { get; init; }

    /// <summary>Inside diameter, 0.001 mm to 1 m.</summary>
    public required Length Bore { get; init; }

    /// <summary>Height of the wall's roughness, 0 to 5 % of the bore.</summary>
    public required Length Roughness { get; init; }

    /// <summary>Outside diameter; null where only the bore is known.</summary>
    public Length? OutsideDiameter { get; init; }

    /// <summary>Least radius of a bend to the centre line; null where not given.</summary>
    public Length? MinimumBendRadius { get; init; }

    /// <summary>Absolute working pressure; null where not given.</summary>
    public Pressure? WorkingPressure { get; init; }

    /// <summary>Material in free text; null where not given.</summary>
    public string? Material { get; init; }
}

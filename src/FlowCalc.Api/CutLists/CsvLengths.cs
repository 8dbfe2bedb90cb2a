using FlowCalc.Api.Answers;
using UnitsNet;

namespace FlowCalc.Api.CutLists;

/// <summary>Lengths and angles of a table: in the small unit of the bench, which the column's name says, to a hundredth of a millimetre.</summary>
/// <param name="system">The system of units.</param>
internal sealed class CsvLengths(Quantities.UnitSystem system)
{
    /// <summary>The unit of lengths, as columns name it: mm, in or m.</summary>
    public string Unit { get; } = system switch { Quantities.UnitSystem.Metric => "mm", Quantities.UnitSystem.Us => "in", _ => "m" };

    /// <summary>The unit of angles: degrees, or radians in SI.</summary>
    public string AngleUnit { get; } = system == Quantities.UnitSystem.Si ? "rad" : "deg";

    /// <summary>A length in that unit; null for none.</summary>
    public double? Of(Length? length) => length is not { } known ? null : UnitWriter.Plain(system switch
    {
        Quantities.UnitSystem.Metric => Math.Round(known.Millimeters, 2),
        Quantities.UnitSystem.Us => Math.Round(known.Inches, 4),
        _ => Math.Round(known.Meters, 5),
    });

    /// <summary>An angle in that unit, to a hundredth of a degree; null for none.</summary>
    public double? Of(Angle? angle) => angle is not { } known ? null : UnitWriter.Plain(system == Quantities.UnitSystem.Si ? Math.Round(known.Radians, 5) : Math.Round(known.Degrees, 2));
}

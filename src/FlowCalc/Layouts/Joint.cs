using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>How a tube ends in a fitting; it belongs to the make of the fitting.</summary>
/// <param name="Insertion">How deep the tube goes in from the fitting's face; null where not given.</param>
/// <param name="CentreToStop">From the fitting's centre to where the tube stops; null where not given. Where it is given, a point's place is the centre of its fitting, else the face.</param>
public readonly record struct Joint(Length? Insertion, Length? CentreToStop)
{
    /// <summary>Whether anything is given.</summary>
    public bool IsGiven => Insertion is not null || CentreToStop is not null;
}

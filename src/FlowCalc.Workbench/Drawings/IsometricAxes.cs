using FlowCalc.Layouts;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>Isometric projection: all three axes at 120° on the sheet and shortened alike, z upright (ISO 5456-3, from memory).</summary>
/// <param name="Turns">Quarter turns of the layout about z before it is drawn, 0 to 3.</param>
readonly record struct IsometricAxes(int Turns)
{
    static readonly double Cosine = Math.Sqrt(3) / 2;

    const double Sine = 0.5;

    /// <summary>A direction of the layout on the sheet.</summary>
    public Spot Of(double x, double y, double z)
    {
        var (forward, left) = Turned(x, y);
        return new((forward - left) * Cosine, (forward + left) * -Sine - z);
    }

    /// <summary>A place on the sheet, m.</summary>
    public Spot Of(Place place) => Of(place.X.Meters, place.Y.Meters, place.Z.Meters);

    /// <summary>How near to the viewer a place is, m.</summary>
    public double Nearness(Place place)
    {
        var (forward, left) = Turned(place.X.Meters, place.Y.Meters);
        return place.Z.Meters - forward - left;
    }

    (double Forward, double Left) Turned(double x, double y) => Turns switch { 0 => (x, y), 1 => (-y, x), 2 => (-x, -y), _ => (y, -x) };
}

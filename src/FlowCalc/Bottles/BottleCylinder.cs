using System.Globalization;

namespace FlowCalc.Bottles;

/// <summary>The inside of a bottle as a cylinder with flat ends that holds the bottle's volume to the last digit.</summary>
/// <param name="Radius">Inside radius, m.</param>
/// <param name="Length">Inside length, m.</param>
/// <param name="Assumption">What was taken for it; null where the document says all of it.</param>
internal sealed record BottleCylinder(double Radius, double Length, Assumption? Assumption)
{
    const double UsualSlenderness = 3;
    const string Pointer = "/supply/bottle/shape";

    /// <summary>The shape given, its length kept and its diameter made to fit the volume; without one, three diameters long, or as long as its dip tube where that is longer.</summary>
    /// <param name="volume">Volume, m³.</param>
    /// <param name="shape">Shape given; null for none.</param>
    /// <param name="dipTube">Length of the dip tube, m; 0 for none.</param>
    public static BottleCylinder Of(double volume, BottleShape? shape, double dipTube)
    {
        if (shape is { } given)
        {
            var exact = RadiusOf(volume, given.Length.Meters);
            // What the document's own digits leave open is no change.
            return Math.Abs(2 * exact / given.Diameter.Meters - 1) <= 1e-3
                ? new(exact, given.Length.Meters, null)
                : new(exact, given.Length.Meters, new(Pointer, Words("its length kept and", exact, given.Length.Meters), "makes the shape agree with the stated volume"));
        }
        var usual = Math.Cbrt(4 * volume / (Math.PI * UsualSlenderness)) * UsualSlenderness;
        var (length, why) = dipTube > usual ? (dipTube, "as long as its dip tube and") : (usual, "three diameters long and");
        var radius = RadiusOf(volume, length);
        return new(radius, length, new(Pointer, Words(why, radius, length), "common practice, no source"));
    }

    static double RadiusOf(double volume, double length) => Math.Sqrt(volume / (Math.PI * length));

    static string Words(string why, double radius, double length) => string.Create(CultureInfo.InvariantCulture,
        $"a cylinder with flat ends, {why} of the stated volume: {length * 1e3:0.#} mm long, {radius * 2e3:0.#} mm inside");
}

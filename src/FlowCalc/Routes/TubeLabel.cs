using System.Globalization;
using FlowCalc.Layouts;

namespace FlowCalc.Routes;

/// <summary>A tube in a word: its name, or its bore where it has none.</summary>
public static class TubeLabel
{
    /// <summary>The word.</summary>
    /// <param name="tube">The tube.</param>
    /// <returns>Its name, or such as <c>6 mm bore</c>.</returns>
    public static string Of(Tube tube)
    {
        ArgumentNullException.ThrowIfNull(tube);
        return tube.Name ?? string.Create(CultureInfo.InvariantCulture, $"{tube.Bore.Millimeters:0.######} mm bore");
    }
}

using System.Text.Json;

namespace FlowCalc.Layouts.Reading;

/// <summary>Holds fittings against the run that they are in.</summary>
static class FittingChecks
{
    const double Slack = 1 + 1e-9;

    /// <summary>The tube's roughness may be too much for the bore of a fitting that is tighter.</summary>
    /// <param name="context">The reading.</param>
    /// <param name="element">The fitting in the run: described there, or by name.</param>
    /// <param name="fitting">The fitting.</param>
    /// <param name="tube">The run's tube.</param>
    public static void Roughness(ReadingContext context, JsonValue element, Fitting fitting, Tube tube)
    {
        if (fitting.Bore is not { } bore || !TubeRoughness.IsTooMuchFor(fitting, tube)) return;
        var roughness = tube.Roughness.Meters;
        if (element.ValueKind is JsonValueKind.Object && element.TryGetProperty("bore", out var given))
            context.Faults.Add(given, $"read {QuantityValue.Shown(given)}: the tube's roughness of {roughness * 1e3:0.######} mm is over 5 % of this bore");
        else
            context.Faults.Add(element, $"{Said.Name(fitting.Name ?? fitting.Kind)} has a bore of {bore.Millimeters:0.######} mm: the tube's roughness of {roughness * 1e3:0.######} mm is over 5 % of this bore");
    }

    /// <summary>A fitting's length is part of its run's.</summary>
    /// <param name="context">The reading.</param>
    /// <param name="element">The run's fittings.</param>
    /// <param name="together">Length of all fittings, m.</param>
    /// <param name="length">Developed length of the run, m; NaN where it is not known.</param>
    public static void Lengths(ReadingContext context, JsonValue element, double together, double length)
    {
        if (together > length * Slack)
            context.Faults.Add(element, $"the fittings are {together:0.######} m long together, over the run's length of {length:0.######} m; the length of a run is the developed one, fittings included");
    }
}

namespace FlowCalc.Api.Tests.Requests;

/// <summary>Takes the numbers of an answer back to SI.</summary>
/// <remarks>Exact by definition: the bar, the pound (avoirdupois), the inch, the pound-force; NIST SP 811 (2008), appendix B.</remarks>
static class SiUnits
{
    const double PascalsInPsi = 4.4482216152605 / (0.0254 * 0.0254), KilogramsInPound = 0.45359237, MetresInFoot = 0.3048, CubicMetresInGallon = 231 * 0.0254 * 0.0254 * 0.0254;

    static readonly Dictionary<string, double> Factors = new()
    {
        ["bar"] = 1e5,
        ["psi"] = PascalsInPsi,
        ["Pa"] = 1,
        ["kg"] = 1,
        ["lb"] = KilogramsInPound,
        ["kg/s"] = 1,
        ["lb/s"] = KilogramsInPound,
        ["L/min"] = 1e-3 / 60,
        ["US gal/min"] = CubicMetresInGallon / 60,
        ["m3/s"] = 1,
        ["m/s"] = 1,
        ["ft/s"] = MetresInFoot,
        ["1"] = 1,
        ["m"] = 1,
        ["ft"] = MetresInFoot,
        ["s"] = 1,
        ["rad"] = 1,
        ["°"] = Math.PI / 180,
        ["K"] = 1,
    };

    /// <summary>A number of a unit in SI.</summary>
    public static double Of(double value, string unit) => unit switch
    {
        "°C" => value + 273.15,
        "°F" => (value + 459.67) * 5 / 9,
        _ => value * Factors[unit],
    };
}

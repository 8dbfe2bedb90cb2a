namespace FlowCalc.Api.Tests.Requests;

/// <summary>Takes the numbers of an answer back to SI.</summary>
/// <remarks>Exact by definition: the bar, the pound (avoirdupois), the inch, the pound-force; NIST SP 811 (2008), appendix B.</remarks>
static class SiUnits
{
    const double PascalsInPsi = 4.4482216152605 / (0.0254 * 0.0254), KilogramsInPound = 0.45359237, MetresInFoot = 0.3048, CubicMetresInGallon = 231 * 0.0254 * 0.0254 * 0.0254;

    static readonly double RootOfBar = Math.Sqrt(1e5), RootOfPsi = Math.Sqrt(PascalsInPsi);

    // What no system of units has is SI in all of them.
    static readonly HashSet<string> Always = ["kg/(m2·s)", "J/kg", "m3/kg", "J/(kg·K)", "kg/(m3·s)", "K/s", "Pa/K", "1/s", "kg/mol", "1/m", "kg/m"];

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
        ["bara"] = 1e5,
        ["psia"] = PascalsInPsi,
        ["Pa(a)"] = 1,
        ["m2"] = 1,
        ["ft2"] = MetresInFoot * MetresInFoot,
        ["m3"] = 1,
        ["L"] = 1e-3,
        ["US gal"] = CubicMetresInGallon,
        ["kg/m3"] = 1,
        ["lb/ft3"] = KilogramsInPound / (MetresInFoot * MetresInFoot * MetresInFoot),
        ["Pa·s"] = 1,
        ["mPa·s"] = 1e-3,
        ["cP"] = 1e-3,
        ["m/s2"] = 1,
        ["ft/s2"] = MetresInFoot,
        ["m3/s/Pa^0.5"] = 1,
        ["L/min/bar^0.5"] = 1e-3 / 60 / RootOfBar,
        ["US gal/min/psi^0.5"] = CubicMetresInGallon / 60 / RootOfPsi,
        ["m3/h"] = 1.0 / 3600 / RootOfBar,
        ["Cv"] = CubicMetresInGallon / 60 / RootOfPsi,
    };

    /// <summary>A number of a unit in SI.</summary>
    public static double Of(double value, string unit) => unit switch
    {
        "°C" => value + 273.15,
        "°F" => (value + 459.67) * 5 / 9,
        _ => Always.Contains(unit) ? value : value * Factors[unit],
    };
}

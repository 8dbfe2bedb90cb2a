using System.Globalization;
using System.Text;

namespace FlowCalc.Api.Tests.Hostile;

/// <summary>Bottles of gases and liquefied gases: some as they are built, some over-filled, nearly empty, or at odds with their agent.</summary>
static class HostileGas
{
    static readonly string[] UnderNitrogen = ["HFC-227ea", "FK-5-1-12", "HFC-125", "HFC-236fa"];
    static readonly string[] Alone = ["carbon-dioxide", "HFC-23"];
    static readonly string[] Inert = ["nitrogen", "argon", "IG-541", "IG-55"];

    /// <summary>An agent.</summary>
    public static string Any(Random random)
    {
        string[] all = [.. UnderNitrogen, .. Alone, .. Inert];
        return all[random.Next(all.Length)];
    }

    /// <summary>A supply of a bottle.</summary>
    public static string Bottle(Random random, bool wild, string agent)
    {
        var litres = HostileSize.Of(random, wild, 0.5, 50, -3, 4);
        var text = new StringBuilder($$"""{"bottle":{"volume":"{{litres}} L" """);
        var misfits = random.Next(12) == 0;
        if (!Inert.Contains(agent) || misfits)
            text.Append($$""","fill":"{{Fill(random, wild)}} kg/m3" """);
        if (!Alone.Contains(agent) || misfits)
            text.Append($$""","chargePressure":"{{HostileSize.Of(random, wild, Inert.Contains(agent) ? 20 : 10, Inert.Contains(agent) ? 300 : 60, -4, 3)}} bar" """);
        if (random.Next(4) == 0)
            text.Append($$""","count":{{random.Next(1, 4)}}""");
        if (random.Next(3) == 0)
            text.Append($$""","openingTime":"{{HostileSize.Of(random, wild, 0, 1, -9, 4)}} s" """);
        if (random.Next(2) == 0)
            text.Append($$""","cushionHeat":"{{random.Next(3) switch { 0 => "wall", 1 => "isothermal", _ => "adiabatic" }}}" """);
        if (wild && random.Next(4) == 0)
            text.Append(""","chargeTemperature":"40 °C" """);
        if (random.Next(3) == 0)
            text.Append($$""","wall":{"material":"{{(random.Next(2) == 0 ? "steel" : "aluminium")}}","thickness":"{{HostileSize.Of(random, wild, 1, 8, -6, 3)}} mm"}""");
        if (random.Next(5) > 0)
            text.Append($$""","outlet":{{HostileBottle.Outlet(random, wild, Math.Cbrt(1e-3 * double.Parse(litres, CultureInfo.InvariantCulture)))}}""");
        return text.Append("} }").ToString();
    }

    static string Fill(Random random, bool wild) => random.Next(8) switch
    {
        0 => "1500",
        1 => "3",
        2 when wild => "0.01",
        _ => (300 + 700 * random.NextDouble()).ToString("R", CultureInfo.InvariantCulture),
    };
}

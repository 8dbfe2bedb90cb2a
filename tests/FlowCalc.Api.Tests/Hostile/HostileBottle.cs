using System.Globalization;
using System.Text;

namespace FlowCalc.Api.Tests.Hostile;

/// <summary>Bottles, and what is asked of them: some as they are built, some over-filled, under-charged, at odds with themselves or at the edge of what a document may state.</summary>
static class HostileBottle
{
    static readonly string[] Temperatures = ["20 °C", "5 °C", "0 °C", "60 °C", "-20 °C", "-100 °C", "99.9 °C", "150 °C", "300 °C", "1e4 K", "-40 °F"];
    static readonly string[] Gravities = ["[0,0,-1]", "[0,0,1]", "[0,1,0]", "[1,0,-1]", "[0,0,0]", "[0,0,-1e6]", "[1e-9,0,0]", "[1e-5,0,-1e-5]", "[-3,2,-5]", "[1e6,1e6,1e6]"];

    /// <summary>A supply of a bottle.</summary>
    public static string Of(Random random, bool wild)
    {
        var litres = Number(HostileSize.Of(random, wild, 0.5, 10, -3, 4));
        var text = new StringBuilder($$"""{"bottle":{"volume":"{{Text(litres)}} L","fill":"{{Text(litres * Part(random))}} kg","chargePressure":"{{Charge(random, wild)}}" """);
        if (random.Next(4) == 0)
            text.Append($$""","count":{{(wild ? (int)Math.Pow(10, 4.2 * random.NextDouble()) : random.Next(1, 4))}}""");
        if (random.Next(3) == 0)
            text.Append($$""","openingTime":"{{HostileSize.Of(random, wild, 0, 1, -9, 4)}} s" """);
        if (random.Next(3) == 0)
            text.Append($$""","cushionHeat":"{{random.Next(3) switch { 0 => "wall", 1 => "isothermal", _ => "adiabatic" }}}" """);
        if (random.Next(4) == 0)
            text.Append($$""","cushionGas":"{{random.Next(3) switch { 0 => "nitrogen", 1 => "argon", _ => "air" }}}" """);
        if (wild && random.Next(4) == 0)
            text.Append($$""","chargeTemperature":"{{Temperatures[random.Next(Temperatures.Length)]}}" """);
        if (random.Next(4) == 0)
            text.Append($$""","wall":{"material":"{{(random.Next(2) == 0 ? "steel" : "aluminium")}}","thickness":"{{HostileSize.Of(random, wild, 1, 5, -6, 3)}} mm"}""");
        var length = LengthOf(random, litres);
        if (random.Next(2) == 0)
            text.Append(Shape(random, litres, length));
        if (random.Next(4) == 0)
            text.Append($$""","axis":{{(random.Next(2) == 0 ? "[0,0,-1]" : "[1,0.2,0.1]")}}""");
        if (random.Next(5) > 0)
            text.Append($$""","outlet":{{Outlet(random, wild, length)}}""");
        return text.Append("} }").ToString();
    }

    /// <summary>Cases, requirement and model; nothing for the usual ones.</summary>
    public static string Asked(Random random, bool wild)
    {
        var text = new StringBuilder();
        if (random.Next(2) == 0)
        {
            var (temperatures, attitudes) = (Some(random, Temperatures, wild), Some(random, Gravities, wild));
            var named = attitudes.Select((gravity, at) => $$"""{"name":"a{{at}}","gravity":{{gravity}}}""");
            text.Append($$""","cases":{"temperatures":[{{string.Join(",", temperatures.Select(temperature => $"\"{temperature}\""))}}],"attitudes":[{{string.Join(",", named)}}]}""");
        }
        if (random.Next(4) == 0)
            text.Append($$""","requirement":{"part":{{Text(Math.Max(random.NextDouble(), 1e-9))}},"of":"contents","within":["{{HostileSize.Of(random, wild, 0, 10, -6, 4)}} s","86400 s"]}""");
        if (random.Next(4) == 0)
            text.Append($$""","model":{"film":{{random.Next(3) switch { 0 => "0", 1 => "0.5", _ => "0.2" }}},"nozzles":"{{random.Next(3) switch { 0 => "frozen", 1 => "equilibrium", _ => "delayed" }}}","nitrogenLag":"{{random.Next(4) switch { 0 => "0 s", 1 => "frozen", 2 => "1 ms", _ => "100 s" }}}"}""");
        if (random.Next(4) == 0)
            text.Append($$""","application":"{{(random.Next(2) == 0 ? "motorsport" : "machine")}}" """);
        if (wild && random.Next(4) == 0)
            text.Append($$""","ambientPressure":"{{HostileSize.Of(random, wild, 0.7, 1.1, -2, 1)}} bara" """);
        return text.ToString();
    }

    // Of the bottle filled with water; 1 leaves no ullage, more does not fit in.
    static double Part(Random random) => random.Next(12) switch
    {
        0 => 1,
        1 => 1.02,
        2 => 0.9975,
        3 => Math.Pow(10, -7 * random.NextDouble()),
        _ => 0.3 + 0.6 * random.NextDouble(),
    };

    static string Charge(Random random, bool wild) => random.Next(12) switch
    {
        0 => "0 bar",
        1 => "-0.5 bar",
        2 => "0.001 bar",
        _ => $"{HostileSize.Of(random, wild, 5, 25, -4, 3)} bar",
    };

    static double LengthOf(Random random, double litres) => Math.Cbrt(1e-3 * litres / (Math.PI / 4)) * (0.5 + 3 * random.NextDouble());

    // One in six disagrees with the volume.
    static string Shape(Random random, double litres, double length)
    {
        var diameter = Math.Sqrt(1e-3 * litres / (Math.PI / 4 * length)) * (random.Next(6) == 0 ? 1.3 : 1);
        return $$""","shape":{"diameter":"{{Text(diameter)}} m","length":"{{Text(length)}} m"}""";
    }

    internal static string Outlet(Random random, bool wild, double length)
    {
        List<string> parts = [];
        if (random.Next(3) > 0)
            parts.Add($$""" "dipTube":{"bore":"{{HostileSize.Of(random, wild, 4, 15, -3, 3)}} mm","length":"{{Text(length * (random.Next(6) == 0 ? 1.5 : 0.2 + 0.8 * random.NextDouble()))}} m"{{(random.Next(4) == 0 ? ",\"follows\":true" : "")}}}""");
        if (random.Next(2) == 0)
            parts.Add($$""" "valveKv":"{{HostileSize.Of(random, wild, 0.5, 5, -6, 6)}} m3/h" """);
        if (random.Next(5) == 0)
            parts.Add($$""" "regulator":{"setPressure":"{{HostileSize.Of(random, wild, 2, 10, -4, 3)}} bar","kv":"{{HostileSize.Of(random, wild, 0.5, 5, -6, 6)}} m3/h"}""");
        if (random.Next(5) == 0)
            parts.Add($$""" "restrictor":{"diameter":"{{HostileSize.Of(random, wild, 1, 6, -3, 3)}} mm","dischargeCoefficient":0.7}""");
        if (random.Next(8) == 0)
            parts.Add($$""" "burstPressure":"{{HostileSize.Of(random, wild, 2, 20, -3, 3)}} bar" """);
        return "{" + string.Join(",", parts) + "}";
    }

    static List<string> Some(Random random, string[] all, bool wild) =>
        [.. all.OrderBy(_ => random.Next()).Take(random.Next(1, 4)).Select(text => wild || random.Next(2) == 0 ? text : all[0]).Distinct()];

    static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    static string Text(double number) => number.ToString("R", CultureInfo.InvariantCulture);
}

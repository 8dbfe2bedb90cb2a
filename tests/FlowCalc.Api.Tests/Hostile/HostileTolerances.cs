using System.Text;

namespace FlowCalc.Api.Tests.Hostile;

/// <summary>Studies of the tolerances of hostile documents, the same ones for the same seed.</summary>
static class HostileTolerances
{
    static readonly string[] Things =
        ["bore", "roughness", "length", "kFactor", "chargePressure", "fill", "temperature", "runs/r1/length", "runs/r2/bore", "runs/R11/length", "points/p2/kFactor", "supply/bottle/fill", "runs/r1/tube", "", "/"];

    static readonly string[] Spreads =
        ["{\"normal\":0.01}", "{\"uniform\":0.05}", "{\"triangular\":0.02}", "{\"triangular\":[-0.01,0.03]}", "{\"normal\":\"0.01 mm\"}", "{\"uniform\":\"1 K\"}", "{\"normal\":0.3}", "{\"uniform\":-1}", "{\"normal\":1e308}", "{}", "null"];

    /// <summary>The request of a seed.</summary>
    public static byte[] Of(int seed)
    {
        var random = new Random(seed);
        var layout = Encoding.UTF8.GetString(random.Next(4) == 0 ? HostileDocuments.OfGas(seed) : HostileDocuments.OnBottle(seed));
        return Encoding.UTF8.GetBytes(
            $$"""{"layout":{{layout}},"answer":"{{(random.Next(3) == 0 ? "discharge" : "flow")}}"{{Asked(random)}},"samples":{{(random.Next(30) == 0 ? 1e9 : 100)}},"seed":{{seed}}{{(random.Next(30) == 0 ? ",\"x\":1" : "")}}}""");
    }

    // Left out, the usual spreads are taken, which fit most layouts; one of a path or a kind fits few.
    static string Asked(Random random)
    {
        if (random.Next(2) == 0) return "";
        var asked = Enumerable.Range(0, random.Next(1, 3)).Select(_ => $"\"{Things[random.Next(random.Next(4) == 0 ? Things.Length : 4)]}\":{Spreads[random.Next(random.Next(4) == 0 ? Spreads.Length : 3)]}");
        return $",\"spreads\":{{{string.Join(',', asked)}}}";
    }
}

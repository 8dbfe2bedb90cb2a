using System.Globalization;
using System.Text;

namespace FlowCalc.Api.Tests.Hostile;

/// <summary>Requests for sizes of hostile documents, the same ones for the same seed.</summary>
static class HostileSizings
{
    static readonly string[] Tubes = ["\"CU-8x1\"", "\"CU-6x1\"", "{\"name\":\"own\",\"tube\":{\"bore\":\"25 mm\"},\"costPerMetre\":2,\"massPerMetre\":\"0.2 kg\"}", "{\"tube\":\"CU-10x1\",\"costPerMetre\":1e300}", "\"\"", "{}", "null"];

    static readonly string[] Orifices = ["\"1.2 mm\"", "{\"diameter\":\"2 mm\",\"dischargeCoefficient\":0.7}", "\"0.001 mm\"", "\"1 m\"", "\"x\"", "[]"];

    static readonly string[] Wishes = ["{\"deviation\":0.2}", "{\"deviation\":1}", "{\"leastPressure\":\"1 bar\"}", "{\"within\":[\"1 s\",\"60 s\"]}", "{\"deviation\":1e-9,\"leastPressure\":\"999 bar\"}", "{}", "7"];

    static readonly string[] Objectives = ["fewest-changes", "least-cost", "least-mass", "best-balance", "shortest-time", "x"];

    /// <summary>The request of a seed.</summary>
    public static byte[] Of(int seed)
    {
        var random = new Random(seed);
        var layout = Encoding.UTF8.GetString(HostileDocuments.OnBottle(seed));
        var stock = $"{{\"tubes\":[{Some(random, Tubes)}],\"orifices\":[{Some(random, Orifices)}],\"kFactors\":[{(random.Next(2) == 0 ? "\"1 L/min/bar^0.5\"" : "")}]}}";
        return Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture,
            $"{{\"layout\":{layout},\"stock\":{stock},\"wish\":{Usual(random, Wishes)},\"objective\":\"{Usual(random, Objectives)}\"{(random.Next(20) == 0 ? ",\"free\":[\"x\"]" : "")}}}"));
    }

    static string Some(Random random, string[] from) => string.Join(',', Enumerable.Range(0, random.Next(3)).Select(_ => Usual(random, from)));

    // The last two of a list are wrong, and seldom taken.
    static string Usual(Random random, string[] from) => from[random.Next(15) == 0 ? random.Next(from.Length) : random.Next(from.Length - 2)];
}

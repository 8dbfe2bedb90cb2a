using System.Globalization;
using System.Text;

namespace FlowCalc.Api.Tests.Hostile;

/// <summary>Requests for sizes of hostile documents, the same ones for the same seed.</summary>
static class HostileSizings
{
    const string Priced = "{\"name\":\"own\",\"tube\":{\"bore\":\"25 mm\"},\"costPerMetre\":2,\"massPerMetre\":\"0.2 kg\"}";

    static readonly string[] Tubes = ["\"CU-8x1\"", "\"CU-6x1\"", Priced, "{}", "null"];

    static readonly string[] Orifices = ["\"1.2 mm\"", "{\"diameter\":\"2 mm\",\"dischargeCoefficient\":0.7}", "\"0.001 mm\"", "\"1 m\"", "\"x\"", "[]"];

    static readonly string[] Wishes = ["{\"deviation\":0.2}", "{\"deviation\":1}", "{\"leastPressure\":\"1 bar\"}", "{\"within\":[\"1 s\",\"60 s\"]}", "{\"deviation\":1e-9,\"leastPressure\":\"999 bar\"}", "{}", "7"];

    static readonly string[] Objectives = ["fewest-changes", "least-cost", "least-mass", "best-balance", "shortest-time", "x"];

    /// <summary>The request of a seed.</summary>
    public static byte[] Of(int seed)
    {
        var random = new Random(seed);
        var layout = Encoding.UTF8.GetString(HostileDocuments.OnBottle(seed));
        var objective = Usual(random, Objectives);
        var tube = objective is "least-cost" or "least-mass" ? Priced : Usual(random, Tubes);
        var stock = $"{{\"tubes\":[{tube}],\"orifices\":[{Some(random, Orifices)}],\"kFactors\":[{(random.Next(2) == 0 ? "\"1 L/min/bar^0.5\"" : "")}]}}";
        return Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture,
            $"{{\"layout\":{layout},\"stock\":{stock},\"wish\":{Usual(random, Wishes)},\"objective\":\"{objective}\"{(random.Next(20) == 0 ? ",\"free\":[\"x\"]" : "")}}}"));
    }

    static string Some(Random random, string[] from) => string.Join(',', Enumerable.Range(0, random.Next(2)).Select(_ => Usual(random, from)));

    // The last two of a list are wrong, and seldom taken.
    static string Usual(Random random, string[] from) => from[random.Next(60) == 0 ? random.Next(from.Length) : random.Next(from.Length - 2)];
}

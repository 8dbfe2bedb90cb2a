using System.Text;
using System.Text.RegularExpressions;

namespace FlowCalc.Api.Tests.Hostile;

/// <summary>Comparisons of hostile documents, the same ones for the same seed: variants that set anything anywhere.</summary>
static partial class HostileComparisons
{
    static readonly string[] Members = ["tube", "bore", "length", "rise", "bends", "bends/0/radius", "fittings", "fittings/0", "from", "to", "leaves", "kFactor", "orifice/diameter", "kind", "fedThrough", "zone", "", "~", "a~1b"];

    static readonly string[] Others = ["supply", "supply/pressure", "supply/bottle/fill", "supply/bottle/chargePressure", "agent", "temperature", "points", "runs", "tubes", "tubes/x", "format", "cases/temperatures/0", "", "/", "//", "zones/x/share"];

    static readonly string[] Usual = ["\"6 mm\"", "\"2 m\"", "\"1 L/min/bar^0.5\"", "\"9 bar\"", "\"20 °C\"", "null", "\"branch\"", "\"run\"", "[]", "0.5"];

    /// <summary>The request of a seed.</summary>
    public static byte[] Of(int seed)
    {
        var random = new Random(seed);
        var layout = Encoding.UTF8.GetString(HostileDocuments.OnBottle(seed));
        var ids = Ids().Matches(layout).Select(match => match.Groups[1].Value).ToArray();
        // Most of the requests set what may well be set, or hardly one would be compared at all.
        var runs = random.Next(20) > 0 ? ids.Where(id => id[0] is 'r' or 'R').ToArray() : [];
        var variants = string.Join(',', Enumerable.Range(0, random.Next(random.Next(20) == 0 ? 0 : 1, 3)).Select(at => runs.Length > 0 ? Sensible(random, at, runs) : Variant(random, at, ids)));
        return Encoding.UTF8.GetBytes($$"""{"layout":{{layout}},"variants":[{{variants}}]{{(random.Next(20) == 0 ? ",\"x\":1" : "")}}}""");
    }

    static string Sensible(Random random, int at, string[] runs) =>
        $$"""{"name":"v{{at}}","set":{"runs/{{Pick(random, runs)}}/{{Pick(random, ["length\":\"9 m", "bore\":\"25 mm", "lossCoefficient\":3,\"note\":\"more"])}}"} }""";

    static string Variant(Random random, int at, string[] ids)
    {
        var name = random.Next(15) == 0 ? "v0" : $"v{at}";
        if (random.Next(10) == 0) return $$"""{"name":"{{name}}","layout":{{HostileTree.Of(random, random.Next(2) == 0, false)}}}""";
        var set = string.Join(',', Enumerable.Range(0, random.Next(1, 4)).Select(_ => $"\"{Path(random, ids)}\":{Value(random)}"));
        return $$"""{"name":"{{name}}","set":{ {{set}} } }""";
    }

    static string Path(Random random, string[] ids)
    {
        if (ids.Length == 0 || random.Next(4) == 0) return Pick(random, Others);
        return $"{(random.Next(3) > 0 ? "runs" : "points")}/{Pick(random, ids)}/{Pick(random, Members)}";
    }

    static string Value(Random random) => random.Next(3) > 0 ? Pick(random, Usual) : Pick(random, HostileDocuments.Values);

    static string Pick(Random random, string[] from) => from[random.Next(from.Length)];

    [GeneratedRegex("\"id\"\\s*:\\s*\"([A-Za-z0-9-]+)\"")]
    private static partial Regex Ids();
}

using System.Globalization;
using System.Text;

namespace FlowCalc.Tests.Flows;

/// <summary>A random layout with tees, bullheads, bends, fittings and rises, as a document whose names and order can be changed.</summary>
internal sealed class RandomLayout
{
    readonly List<(string Id, string Json)> _points = [];
    readonly List<(string From, string To, string Json)> _runs = [];

    public RandomLayout(int seed)
    {
        var random = new Random(seed);
        _points.Add(("S", "\"kind\": \"supply\""));
        var open = new List<(string Id, double Bore)> { ("S", 8) };
        var tees = 1 + random.Next(6);
        for (var i = 0; open.Count > 0; i++)
        {
            var (from, bore) = open[0];
            open.RemoveAt(0);
            var leaving = _points.First(p => p.Id == from).Json;
            var count = leaving.Contains("tee", StringComparison.Ordinal) ? 2 : 1;
            for (var leg = 0; leg < count; leg++)
            {
                var id = $"N{_points.Count}";
                var own = Math.Max(3, bore - random.Next(3));
                var isTee = tees > 0;
                if (isTee) tees--;
                _points.Add((id, isTee ? Tee(random) : Nozzle(random)));
                _runs.Add((from, id, Run(random, own, leaving, leg)));
                if (isTee) open.Add((id, own));
            }
        }
    }

    /// <summary>Points with their document text, the supply first.</summary>
    public IReadOnlyList<(string Id, string Json)> Points => _points;

    /// <summary>The document, with points and runs in the order that a seed gives and each name changed by a function; on a held pressure, or on a bottle.</summary>
    public string Document(Func<string, string>? rename = null, int? shuffle = null, string pressure = "10 bar", string? bottle = null)
    {
        rename ??= id => id;
        var order = shuffle is { } seed ? new Random(seed) : null;
        string[] points = [.. _points.Select(p => $$"""{ "id": "{{rename(p.Id)}}", {{p.Json}} }""")];
        string[] runs = [.. _runs.Select(r => $$"""{ "from": "{{rename(r.From)}}", "to": "{{rename(r.To)}}", {{r.Json}} }""")];
        order?.Shuffle(points);
        order?.Shuffle(runs);
        return new StringBuilder()
            .Append(CultureInfo.InvariantCulture, $$"""{ "format": 1, "agent": "water", "temperature": "20 °C", "supply": {{(bottle is null ? $$"""{ "pressure": "{{pressure}}" }""" : $$"""{ "bottle": {{bottle}} }""")}}, "points": [ """)
            .AppendJoin(", ", points).Append(" ], \"runs\": [ ").AppendJoin(", ", runs).Append(" ] }").ToString();
    }

    static string Tee(Random random) =>
        $$"""
        "kind": "tee", "fedThrough": "{{(random.Next(3) == 0 ? "branch" : "run")}}", "body": "{{(random.Next(2) == 0 ? "smooth" : "threaded")}}"
        """;

    static string Nozzle(Random random) => Invariant($$"""
        "kind": "nozzle", "orifice": { "diameter": "{{1 + random.NextDouble()}} mm", "dischargeCoefficient": 0.8 }
        """);

    static string Run(Random random, double bore, string leaving, int leg)
    {
        var leaves = leaving.Contains("\"run\"", StringComparison.Ordinal) ? $"\"leaves\": \"{(leg == 0 ? "run" : "branch")}\", " : "";
        var bends = random.Next(2) == 0 ? Invariant($$"""
            , "bends": [ { "angle": "{{30 + 60 * random.NextDouble()}} °", "radius": "{{3 * bore}} mm", "count": {{1 + random.Next(2)}} } ]
            """) : "";
        var fittings = random.Next(3) == 0 ? Invariant($$"""
            , "fittings": [ { "kind": "union", "bore": "{{0.8 * bore}} mm", "length": "20 mm" }, { "kind": "valve", "kv": "{{1 + random.NextDouble()}} m3/h" } ]
            """) : "";
        return leaves + Invariant($$"""
            "bore": "{{bore}} mm", "roughness": "2 µm", "length": "{{0.3 + random.NextDouble()}} m", "rise": "{{0.4 * (random.NextDouble() - 0.5)}} m", "lossCoefficient": {{random.NextDouble()}}
            """) + bends + fittings;
    }

    static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}

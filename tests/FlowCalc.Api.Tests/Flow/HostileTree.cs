using System.Globalization;
using System.Text;

namespace FlowCalc.Api.Tests.Flow;

/// <summary>Small trees that mostly make sense, of sizes from the everyday to the edge of what a document may state.</summary>
static class HostileTree
{
    /// <summary>One tree.</summary>
    public static string Of(Random random)
    {
        var wild = random.Next(3) == 0;
        var (points, runs) = (new StringBuilder(), new StringBuilder());
        points.Append("""{"id":"p0","kind":"supply"}""");
        var open = new Queue<(int From, string Leaves)>([(0, "")]);
        var (count, tees) = (1, random.Next(0, 12));
        while (open.TryDequeue(out var end))
        {
            var id = count++;
            runs.Append(runs.Length > 0 ? "," : "").Append(Run(random, wild, end.From, id, end.Leaves));
            points.Append(',').Append(Point(random, wild, id, tees, open));
            tees -= open.Count > 0 ? 1 : 0;
        }
        var supply = random.Next(2) == 0 ? $$"""{"pressure":"{{Size(random, wild, 1, 40, -3, 5)}} bar"}""" : Bottle(random, wild);
        return $$"""{"format":1,"agent":{{Agent(random, wild)}},"supply":{{supply}},"points":[{{points}}],"runs":[{{runs}}]}""";
    }

    static string Point(Random random, bool wild, int id, int tees, Queue<(int, string)> open)
    {
        switch (tees > 0 ? random.Next(5) : 4)
        {
            case 0:
                open.Enqueue((id, ""));
                return $$"""{"id":"p{{id}}","kind":"reducer"}""";
            case 1:
                for (var legs = random.Next(1, 4); legs > 0; legs--)
                    open.Enqueue((id, ""));
                return $$"""{"id":"p{{id}}","kind":"junction"}""";
            case 2:
                open.Enqueue((id, ""));
                open.Enqueue((id, ""));
                return $$"""{"id":"p{{id}}","kind":"tee","fedThrough":"branch"}""";
            case 3:
                open.Enqueue((id, "run"));
                open.Enqueue((id, "branch"));
                return $$"""{"id":"p{{id}}","kind":"tee","fedThrough":"run","body":"{{(random.Next(2) == 0 ? "smooth" : "threaded")}}"}""";
            default:
                return random.Next(12) == 0
                    ? $$"""{"id":"p{{id}}","kind":"cap"}"""
                    : $$"""{"id":"p{{id}}","kind":"nozzle","kFactor":"{{Size(random, wild, 0.1, 5, -9, 6)}} L/min/bar^0.5"}""";
        }
    }

    static string Run(Random random, bool wild, int from, int to, string leaves)
    {
        var text = new StringBuilder($$"""{"id":"r{{to}}","from":"p{{from}}","to":"p{{to}}","bore":"{{Size(random, wild, 2, 20, -3, 3)}} mm","length":"{{Size(random, wild, 0.1, 5, -6, 4)}} m" """);
        if (leaves.Length > 0)
            text.Append($$""","leaves":"{{leaves}}" """);
        if (random.Next(3) == 0)
            text.Append($$""","rise":"{{(random.Next(2) == 0 ? "" : "-")}}{{Size(random, wild, 0.01, 0.1, -6, 4)}} m" """);
        if (random.Next(4) == 0)
            text.Append($$""","bends":[{"angle":"{{random.Next(1, 180)}} °","radius":"{{Size(random, wild, 10, 60, -2, 4)}} mm","count":{{random.Next(1, 4)}}}]""");
        if (random.Next(5) == 0)
            text.Append($$""","lossCoefficient":{{Size(random, wild, 0.1, 10, -9, 12)}}""");
        if (random.Next(6) == 0)
            text.Append($$""","fittings":[{"kind":"valve","kv":"{{Size(random, wild, 0.1, 5, -6, 6)}} m3/h"}]""");
        if (random.Next(6) == 0)
            text.Append($$""","roughness":"{{Size(random, wild, 0.1, 5, -6, 3)}} µm" """);
        return text.Append('}').ToString();
    }

    static string Agent(Random random, bool wild) => random.Next(4) switch
    {
        0 => """{"mixture":"water-propylene-glycol","massFraction":0.35}""",
        1 => $$"""{"density":"{{Size(random, wild, 700, 1400, -3, 5)}} kg/m3","viscosity":"{{Size(random, wild, 0.5, 50, -6, 8)}} mPa·s"}""",
        _ => "\"water\"",
    };

    static string Bottle(Random random, bool wild) =>
        $$"""{"bottle":{"volume":"{{Size(random, wild, 4, 10, -3, 4)}} L","fill":"{{Size(random, wild, 1, 3, -3, 4)}} kg","chargePressure":"{{Size(random, wild, 8, 20, -3, 4)}} bar","outlet":{"valveKv":"{{Size(random, wild, 0.5, 5, -5, 5)}} m3/h"} } }""";

    // Everyday sizes evenly, wild ones evenly in their exponent.
    static string Size(Random random, bool wild, double low, double high, int leastExponent, int mostExponent)
    {
        var value = wild && random.Next(3) == 0
            ? Math.Pow(10, leastExponent + (mostExponent - leastExponent) * random.NextDouble())
            : low + (high - low) * random.NextDouble();
        return value.ToString("R", CultureInfo.InvariantCulture);
    }
}

using System.Text;

namespace FlowCalc.Api.Tests.Hostile;

/// <summary>Small trees that mostly make sense, of sizes from the everyday to the edge of what a document may state.</summary>
static class HostileTree
{
    /// <summary>One tree.</summary>
    /// <param name="random">Where its sizes come from.</param>
    /// <param name="isBottle">Whether a bottle must feed it; else a held pressure does about as often.</param>
    /// <param name="isGas">Whether its agent is a gas or a liquefied gas; else a liquid.</param>
    public static string Of(Random random, bool isBottle = false, bool isGas = false)
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
        var gas = HostileGas.Any(random);
        var bottle = isGas ? HostileGas.Bottle(random, wild, gas) : HostileBottle.Of(random, wild);
        var supply = isBottle || random.Next(2) == 0 ? bottle : $$"""{"pressure":"{{HostileSize.Of(random, wild, 1, 40, -3, 5)}} bar"}""";
        return $$"""{"format":1,"agent":{{(isGas ? $"\"{gas}\"" : Agent(random, wild))}},"supply":{{supply}},"points":[{{points}}],"runs":[{{runs}}]{{HostileBottle.Asked(random, wild)}}}""";
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
                    : random.Next(3) == 0
                        ? $$"""{"id":"p{{id}}","kind":"nozzle","orifice":{"diameter":"{{HostileSize.Of(random, wild, 0.5, 5, -3, 3)}} mm","dischargeCoefficient":0.8} }"""
                        : $$"""{"id":"p{{id}}","kind":"nozzle","kFactor":"{{HostileSize.Of(random, wild, 0.1, 5, -9, 6)}} L/min/bar^0.5"}""";
        }
    }

    static string Run(Random random, bool wild, int from, int to, string leaves)
    {
        var text = new StringBuilder($$"""{"id":"r{{to}}","from":"p{{from}}","to":"p{{to}}","bore":"{{HostileSize.Of(random, wild, 2, 20, -3, 3)}} mm","length":"{{HostileSize.Of(random, wild, 0.1, 5, -6, 4)}} m" """);
        if (leaves.Length > 0)
            text.Append($$""","leaves":"{{leaves}}" """);
        if (random.Next(3) == 0)
            text.Append($$""","rise":"{{(random.Next(2) == 0 ? "" : "-")}}{{HostileSize.Of(random, wild, 0.01, 0.1, -6, 4)}} m" """);
        if (random.Next(4) == 0)
            text.Append($$""","bends":[{"angle":"{{random.Next(1, 180)}} °","radius":"{{HostileSize.Of(random, wild, 10, 60, -2, 4)}} mm","count":{{random.Next(1, 4)}}}]""");
        if (random.Next(5) == 0)
            text.Append($$""","lossCoefficient":{{HostileSize.Of(random, wild, 0.1, 10, -9, 12)}}""");
        if (random.Next(6) == 0)
            text.Append($$""","fittings":[{"kind":"valve","kv":"{{HostileSize.Of(random, wild, 0.1, 5, -6, 6)}} m3/h"}]""");
        if (random.Next(6) == 0)
            text.Append($$""","roughness":"{{HostileSize.Of(random, wild, 0.1, 5, -6, 3)}} µm" """);
        return text.Append('}').ToString();
    }

    static string Agent(Random random, bool wild) => random.Next(4) switch
    {
        0 => """{"mixture":"water-propylene-glycol","massFraction":0.35}""",
        1 => $$"""{"density":"{{HostileSize.Of(random, wild, 700, 1400, -3, 5)}} kg/m3","viscosity":"{{HostileSize.Of(random, wild, 0.5, 50, -6, 8)}} mPa·s"}""",
        _ => "\"water\"",
    };
}

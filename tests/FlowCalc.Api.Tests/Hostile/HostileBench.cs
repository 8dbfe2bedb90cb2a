using System.Globalization;
using System.Text.Json.Nodes;

namespace FlowCalc.Api.Tests.Hostile;

/// <summary>Figures of the bench at and within the ends of their ranges: joints longer than their runs, stock shorter than its kerf, clips by the thousand.</summary>
static class HostileBench
{
    /// <summary>Puts a bench into a document that makes sense.</summary>
    public static void Add(Random random, JsonNode document)
    {
        document["cutting"] = new JsonObject
        {
            ["kerf"] = Length(random, 0, 0.1),
            ["squaring"] = Length(random, 0, 0.1),
            ["spare"] = random.Next(3) / 2.0,
            ["benderGrip"] = Length(random, 0, 10),
            ["clipSpacing"] = Length(random, 0.01, 100),
            ["insertion"] = Length(random, 0, 10),
            ["stock"] = new JsonArray(random.Next(2) == 0
                ? new JsonObject { ["coil"] = Length(random, 0.001, 10_000) }
                : new JsonObject { ["lengths"] = new JsonArray([.. Enumerable.Range(0, random.Next(1, 20)).Select(_ => (JsonNode)Length(random, 0.001, 10_000))]) }),
        };
        foreach (var point in document["points"]!.AsArray())
            if (random.Next(3) == 0) point![random.Next(2) == 0 ? "insertion" : "centreToStop"] = Length(random, 0, 10);
        foreach (var run in document["runs"]!.AsArray())
        {
            if (random.Next(4) == 0) run!["startJoint"] = new JsonObject { ["centreToStop"] = Length(random, 0, 10) };
            if (random.Next(4) == 0) run!["clips"] = new JsonArray([.. Enumerable.Range(0, random.Next(4)).Select(_ => (JsonNode)"0 m")]);
            if (random.Next(8) == 0) run!["fittings"] = new JsonArray(new JsonObject { ["fitting"] = new JsonObject { ["kind"] = "union", ["centreToStop"] = Length(random, 0, 10) }, ["at"] = "0 m" });
        }
    }

    // The ends of the range come as often as all between.
    static string Length(Random random, double least, double most)
    {
        var metres = random.Next(4) switch { 0 => least, 1 => most, _ => Math.Clamp(Math.Pow(10, random.NextDouble() * 8 - 4), least, most) };
        return metres.ToString("R", CultureInfo.InvariantCulture) + " m";
    }
}

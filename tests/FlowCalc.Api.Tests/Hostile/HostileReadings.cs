using System.Globalization;
using System.Text.Json.Nodes;

namespace FlowCalc.Api.Tests.Hostile;

/// <summary>Readings of a test from the everyday to what no system gives: nothing here, a river there, pressures over the supply's.</summary>
static class HostileReadings
{
    /// <summary>Puts a test into a document that makes sense.</summary>
    public static void Add(Random random, JsonNode document)
    {
        if (document["supply"]!["bottle"] is not null && random.Next(3) == 0)
        {
            document["measured"] = new JsonObject { ["dischargeTime"] = Size(random, 0.1, 1e4) + " s" };
            return;
        }
        var (flows, pressures) = (new JsonObject(), new JsonObject());
        foreach (var point in document["points"]!.AsArray())
        {
            var id = point!["id"]!.GetValue<string>();
            if (point["kind"]!.GetValue<string>() == "nozzle" && random.Next(5) > 0)
                flows[id] = random.Next(4) == 0 ? new JsonObject { ["reading"] = Size(random, 0, 1e3) + " L/min", ["uncertainty"] = random.Next(2) == 0 ? 1e-4 : 1 } : Size(random, 0, 1e3) + " L/min";
            else if (id != "p0" && random.Next(4) == 0)
                pressures[id] = Size(random, -0.5, 900) + " bar";
        }
        var test = new JsonObject { ["supplyPressure"] = Size(random, 0.001, 900) + " bar" };
        if (flows.Count > 0) test["flows"] = flows;
        if (pressures.Count > 0) test["pressures"] = pressures;
        document["measured"] = test;
    }

    // The ends of the range come as often as all between.
    static string Size(Random random, double least, double most) =>
        (random.Next(6) switch { 0 => least, 1 => most, _ => Math.Clamp(Math.Pow(10, random.NextDouble() * 4 - 2), least, most) }).ToString("R", CultureInfo.InvariantCulture);
}

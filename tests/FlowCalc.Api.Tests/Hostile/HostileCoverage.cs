using System.Text;
using System.Text.Json.Nodes;
using FlowCalc.Api.Tests.Flow;

namespace FlowCalc.Api.Tests.Hostile;

/// <summary>The demo on water from the mains, its coverage and zones full of odd and wrong values.</summary>
static class HostileCoverage
{
    static readonly string[] Lengths = ["0 m", "1e-9 m", "1 mm", "0.3 m", "-0.3 m", "1 m", "5 m", "10 km", "-10 km", "11 km", "1", "1,5 m", "NaN m"];
    static readonly string[] Angles = ["1°", "30°", "90°", "120°", "175°", "180°", "0°", "-20°", "1 rad", "4 rad"];
    static readonly string[] Agents = ["water", "nitrogen", "carbon-dioxide", "HFC-227ea", "FK-5-1-12", "IG-541"];

    /// <summary>The document of a seed, UTF-8.</summary>
    public static byte[] Of(int seed)
    {
        var random = new Random(seed);
        var demo = JsonNode.Parse(Documents.Demo)!.AsObject();
        demo.Remove("mount");
        demo.Remove("service");
        demo["agent"] = random.Next(3) == 0 ? Agents[random.Next(Agents.Length)] : "water";
        demo["supply"] = JsonNode.Parse("""{ "pressure": "40 bar" }""");
        var edits = random.Next(6);
        for (var i = 0; i < edits; i++) Spoil(demo, random);
        var text = demo.ToJsonString();
        return Encoding.UTF8.GetBytes(random.Next(20) == 0 ? text[..random.Next(text.Length)] : text);
    }

    static void Spoil(JsonObject demo, Random random)
    {
        var coverage = demo["coverage"]!.AsObject();
        var nozzle = demo["points"]!.AsArray().Where(point => (string?)point!["kind"] == "nozzle").ElementAt(random.Next(7))!.AsObject();
        var zone = demo["zones"]!.AsObject().ElementAt(random.Next(3)).Value!.AsObject();
        switch (random.Next(10))
        {
            case 0:
                nozzle["aim"] = new JsonArray(Number(random), Number(random), Number(random));
                break;
            case 1:
                nozzle["aim"] = Place(random);
                break;
            case 2:
                nozzle["spray"] = new JsonObject { ["angle"] = Angles[random.Next(Angles.Length)], ["range"] = new JsonArray(Length(random), Length(random)) };
                break;
            case 3:
                nozzle["spray"] = new JsonObject { ["angle"] = Angles[random.Next(Angles.Length)] };
                break;
            case 4:
                Surfaces(coverage)[$"s{random.Next(50)}"] = new JsonObject { ["corner"] = Place(random), ["edges"] = new JsonArray(Place(random), Place(random)) };
                break;
            case 5:
                Surfaces(coverage)[$"s{random.Next(50)}"] = new JsonObject { ["corners"] = new JsonArray([.. Enumerable.Range(0, random.Next(2, 9)).Select(_ => (JsonNode)Place(random))]) };
                break;
            case 6:
                coverage["bodies"]!.AsObject()[$"b{random.Next(50)}"] = new JsonObject { ["from"] = Place(random), ["to"] = Place(random) };
                break;
            case 7:
                coverage["targets"]!.AsObject()[$"t{random.Next(50)}"] = new JsonObject { ["at"] = Place(random) };
                break;
            case 8:
                zone["volume"] = random.Next(3) switch { 0 => "0.001 L", 1 => "1000000 m3", _ => "0 L" };
                zone["airflow"] = random.Next(3) switch { 0 => "0 m3/s", 1 => "100000 m3/s", _ => "1e-300 m3/s" };
                zone["temperatures"] = new JsonArray(random.Next(2) == 0 ? "-100 °C" : "20 °C", random.Next(2) == 0 ? "300 °C" : "0 °C");
                break;
            default:
                zone["protection"] = random.Next(3) switch { 0 => "flooding", 1 => "local", _ => "none" };
                zone["design"] = Number(random);
                demo["requirement"] = JsonNode.Parse("""{ "part": 0.95, "of": "quantity", "quantity": "1000000 kg", "within": ["0 s", "60 s"] }""");
                break;
        }
    }

    static JsonObject Surfaces(JsonObject coverage) => coverage["surfaces"]!.AsObject();

    static JsonArray Place(Random random) => new(Length(random), Length(random), Length(random));

    // Mostly sound, or nothing would ever be answered.
    static JsonValue Length(Random random) => JsonValue.Create(Lengths[random.Next(4) == 0 ? random.Next(Lengths.Length) : random.Next(2, 7)])!;

    static JsonValue Number(Random random) => JsonValue.Create(random.Next(6) switch { 0 => 0, 1 => 1e-7, 2 => 1e6, 3 => -1, 4 => 0.3, _ => random.NextDouble() })!;
}

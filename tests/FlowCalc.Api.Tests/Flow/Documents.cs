using System.Text;
using System.Text.Json.Nodes;
using FlowCalc.Examples;

namespace FlowCalc.Api.Tests.Flow;

/// <summary>Layout documents for the tests.</summary>
static class Documents
{
    /// <summary>The demo as it is in the library.</summary>
    public static string Demo { get; } = Encoding.UTF8.GetString(ExampleCatalogue.Find("raid-pickup")!.Value.Span);

    /// <summary>A held pressure, one tee and two nozzles.</summary>
    public const string Small =
        """
        {
          "format": 1,
          "agent": "water",
          "supply": { "pressure": "12 bar" },
          "points": [
            { "id": "valve", "kind": "supply" },
            { "id": "tee", "kind": "tee", "fedThrough": "branch" },
            { "id": "left", "kind": "nozzle", "kFactor": "1.2 L/min/bar^0.5" },
            { "id": "right", "kind": "nozzle", "kFactor": "1.2 L/min/bar^0.5" }
          ],
          "runs": [
            { "id": "feed", "from": "valve", "to": "tee", "bore": "6 mm", "length": "2 m" },
            { "id": "short", "from": "tee", "to": "left", "bore": "4 mm", "length": "0.8 m", "bends": [{ "angle": "90°", "radius": "18 mm" }] },
            { "id": "long", "from": "tee", "to": "right", "bore": "4 mm", "length": "1.6 m", "rise": "0.4 m" }
          ]
        }
        """;

    /// <summary>The demo, changed.</summary>
    public static string DemoWith(Action<JsonNode> change)
    {
        var demo = JsonNode.Parse(Demo)!;
        change(demo);
        return demo.ToJsonString();
    }

    /// <summary>The small document, changed.</summary>
    public static string SmallWith(Action<JsonObject> change)
    {
        var document = JsonNode.Parse(Small)!.AsObject();
        change(document);
        return document.ToJsonString();
    }

    /// <summary>A chain of tees with a nozzle at each: about <paramref name="points"/> points.</summary>
    public static string Chain(int points)
    {
        var tees = (points - 2) / 2;
        var text = new StringBuilder("""{"format":1,"agent":"water","supply":{"pressure":"16 bar"},"points":[{"id":"s","kind":"supply"}""");
        for (var at = 0; at < tees; at++)
            text.Append($$""",{"id":"t{{at}}","kind":"tee","fedThrough":"run"},{"id":"n{{at}}","kind":"nozzle","kFactor":"0.001 L/min/bar^0.5"}""");
        text.Append(""",{"id":"end","kind":"nozzle","kFactor":"0.001 L/min/bar^0.5"}],"runs":[""");
        for (var at = 0; at < tees; at++)
        {
            var from = at == 0 ? "s" : $"t{at - 1}";
            text.Append($$"""{"from":"{{from}}","to":"t{{at}}","bore":"40 mm","length":"0.1 m"{{(at == 0 ? "" : ",\"leaves\":\"run\"")}}},""");
            text.Append($$"""{"from":"t{{at}}","to":"n{{at}}","bore":"4 mm","length":"0.2 m","leaves":"branch"},""");
        }
        return text.Append($$"""{"from":"t{{tees - 1}}","to":"end","bore":"40 mm","length":"0.1 m","leaves":"run"}]}""").ToString();
    }
}

using System.Text.Json.Nodes;
using FlowCalc.Api.Tests.Flow;

namespace FlowCalc.Api.Tests.Discharge;

/// <summary>Layout documents with a bottle for the tests.</summary>
static class DischargeDocuments
{
    /// <summary>The small layout on a bottle of 2 L with a dip tube to its base, at one temperature, upright.</summary>
    public static string Small { get; } = SmallWith(_ => { });

    /// <summary>The small document with a bottle, changed.</summary>
    public static string SmallWith(Action<JsonObject> change) => Documents.SmallWith(layout =>
    {
        layout["supply"] = JsonNode.Parse(
            """
            { "bottle": {
                "volume": "2 L", "fill": "1.4 kg", "chargePressure": "12 bar", "shape": { "diameter": "100 mm", "length": "255 mm" },
                "outlet": { "dipTube": { "bore": "8 mm", "length": "250 mm" }, "valveKv": "1.5 m3/h" } } }
            """);
        layout["cases"] = JsonNode.Parse("""{ "temperatures": ["20 °C"], "attitudes": [{ "name": "upright", "gravity": [0, 0, -1] }] }""");
        change(layout);
    });

    /// <summary>The small document with a bottle, changed there.</summary>
    public static string BottleWith(Action<JsonObject> change) => SmallWith(layout => change(layout["supply"]!["bottle"]!.AsObject()));

    /// <summary>The small document with a bottle, at other temperatures and attitudes.</summary>
    public static string Cases(string cases) => SmallWith(layout => layout["cases"] = JsonNode.Parse(cases));

    /// <summary>A comb of about so many points on a bottle; slow to answer where there are many.</summary>
    public static string Chain(int points)
    {
        var chain = JsonNode.Parse(Documents.Chain(points))!.AsObject();
        chain["supply"] = JsonNode.Parse("""{ "bottle": { "volume": "20 L", "fill": "14 kg", "chargePressure": "16 bar" } }""");
        foreach (var point in chain["points"]!.AsArray())
            if (point!["kFactor"] is not null)
                point["kFactor"] = "0.1 L/min/bar^0.5";
        return chain.ToJsonString();
    }
}

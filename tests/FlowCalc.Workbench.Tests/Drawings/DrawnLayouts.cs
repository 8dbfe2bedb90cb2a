using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using System.Xml.Linq;
using FlowCalc.Examples;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Workbench.Drawings;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Hosting;
using FlowCalc.Workbench.Pictures;
using FlowCalc.Workbench.Solving;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;

namespace FlowCalc.Workbench.Tests.Drawings;

/// <summary>Layouts to draw, and their drawings.</summary>
static class DrawnLayouts
{
    /// <summary>Every example by name.</summary>
    public static TheoryData<string> Examples => [.. ExampleCatalogue.All.Select(example => example.Name)];

    public static JsonNode Demo => Document("raid-pickup");

    public static JsonNode Document(string example) => JsonNode.Parse(ExampleCatalogue.Find(example)!.Value.Span)!;

    public static Layout Read(JsonNode document) => Read(document.ToJsonString());

    public static Layout Read(string json)
    {
        var reading = LayoutReader.Read(Encoding.UTF8.GetBytes(json), null, TestContext.Current.CancellationToken);
        return reading.Layout ?? throw new InvalidOperationException($"{string.Join("; ", reading.Faults)} in {json}");
    }

    public static SolvedLayout Solve(JsonNode document) => SolvedLayout.OfFlow(Read(document), UnitSystem.Metric, TestContext.Current.CancellationToken);

    public static Picture Draw(Layout layout, DrawingView? view = null) => LayoutDrawing.Of(layout, new DrawingChoice { View = view }, Shown(layout), TestContext.Current.CancellationToken);

    public static Picture Draw(SolvedLayout solved, DrawingView? view = null, DrawingColour colour = DrawingColour.Flow) =>
        LayoutDrawing.Of(solved, new DrawingChoice { View = view, Colour = colour }, Shown(solved.Layout), TestContext.Current.CancellationToken);

    /// <summary>The picture as the text of an SVG file.</summary>
    public static async Task<string> SvgAsync(Picture picture)
    {
        await using var services = new ServiceCollection().BuildServiceProvider();
        return await new StaticMarkup(services, NullLoggerFactory.Instance).SvgAsync(picture);
    }

    /// <summary>The same, read as XML.</summary>
    public static async Task<XElement> XmlAsync(Picture picture) => XDocument.Parse(await SvgAsync(picture)).Root!;

    /// <summary>The views in which a layout can be drawn.</summary>
    public static DrawingView[] Views(Layout layout) => LayoutDrawing.HasPlaces(layout) ? [DrawingView.Tree, DrawingView.Isometric] : [DrawingView.Tree];

    /// <summary>A line of points one behind the other, as long as it says; with places a staircase.</summary>
    public static Layout Chain(int points, bool isPlaced)
    {
        string At(int at) => isPlaced ? string.Create(CultureInfo.InvariantCulture, $$""", "at": ["{{at / 3}} m", "{{(at + 1) / 3}} m", "{{(at + 2) / 3}} m"] """) : "";
        var middle = string.Concat(Enumerable.Range(1, points - 2).Select(at => $$"""{ "id": "p{{at}}", "kind": "reducer"{{At(at)}} }, """));
        var runs = string.Join(", ", Enumerable.Range(1, points - 1).Select(at => $$"""{ "id": "r{{at}}", "from": "p{{at - 1}}", "to": "p{{at}}", "bore": "{{4 + at % 3}} mm"{{(isPlaced ? "" : ", \"length\": \"1 m\"")}} }"""));
        return Read($$"""
            { "format": 1, "agent": "water", "supply": { "pressure": "12 bar" },
              "points": [ { "id": "p0", "kind": "supply"{{At(0)}} }, {{middle}} { "id": "p{{points - 1}}", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5"{{At(points - 1)}} } ],
              "runs": [ {{runs}} ] }
            """);
    }

    static Shown Shown(Layout layout) => new(UnitSystem.Metric, layout.AmbientPressure);
}

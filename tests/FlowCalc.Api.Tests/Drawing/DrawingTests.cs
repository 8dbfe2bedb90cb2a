using System.Collections.Concurrent;
using System.Text;
using System.Text.Json.Nodes;
using System.Xml.Linq;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hostile;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Drawing;

public sealed class DrawingTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Theory]
    [InlineData("", "Isometric view, to scale, coloured by flow", "L/min")]
    [InlineData("?colour=pressure&units=us", "Isometric view, to scale, coloured by pressure", "psi")]
    [InlineData("?view=isometric&colour=share", "Isometric view, to scale, coloured by part of the whole flow", "%")]
    [InlineData("?view=tree&units=si", "Tree, lengths not to scale, coloured by flow", "m3/s")]
    [InlineData("?view=tree&colour=none", "Tree, lengths not to scale · no results", "mm")]
    public async Task Demo_is_drawn_as_an_SVG_that_stands_alone_and_may_run_nothing(string query, string about, string unit)
    {
        using var answer = await caller.PostDrawing(Documents.Demo, query);

        Assert.Equal(200, (int)answer.StatusCode);
        Assert.Equal("image/svg+xml", answer.Content.Headers.ContentType?.ToString());
        Assert.StartsWith("default-src 'none';", Assert.Single(answer.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        var svg = XDocument.Parse(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)).Root!;
        Assert.Equal(XName.Get("svg", "http://www.w3.org/2000/svg"), svg.Name);
        var texts = svg.Descendants().Where(element => element.Name.LocalName == "text").Select(element => element.Value).ToList();
        Assert.Contains(texts, text => text.StartsWith(about, StringComparison.Ordinal));
        Assert.Contains(texts, text => text.Contains(unit, StringComparison.Ordinal));
        Assert.Contains(texts, text => text.StartsWith("No approval:", StringComparison.Ordinal));
        Assert.Contains(svg.Descendants().Attributes("data-path"), path => path.Value == "runs/R11");
    }

    [Theory]
    [InlineData("?view=plan", "?view", "auto and isometric and tree")]
    [InlineData("?view=tree&view=tree", "?view", "more than once")]
    [InlineData("?colour=velocity", "?colour", "flow and pressure and share and none")]
    [InlineData("?units=imperial", "?units", "metric, us and si")]
    [InlineData("?format=png", "?format", "it takes units, view, colour")]
    [InlineData("?view=isometric", "?view", "\"S\" has none")]
    public async Task Query_that_does_not_fit_is_told(string query, string place, string words)
    {
        var fault = await caller.PostDrawing(Placeless, query).Fault(422);

        Assert.Contains(words, fault.GetProperty("errors").GetProperty(place)[0].GetString()!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Layout_whose_flow_is_not_found_is_a_422_that_says_so_and_is_drawn_without_colours()
    {
        // Charged a little over the surroundings while it was hot: at 5 °C nothing flows.
        var document = JsonNode.Parse(Documents.Demo)!;
        var bottle = document["supply"]!["bottle"]!;
        (bottle["chargePressure"], bottle["chargeTemperature"], document["temperature"]) = ("0.1 bar", "60 °C", "5 °C");

        var fault = await caller.PostDrawing(document.ToJsonString()).Fault(422);
        using var alone = await caller.PostDrawing(document.ToJsonString(), "?colour=none");

        Assert.Contains("colour=none", fault.GetProperty("errors").GetProperty("")[0].GetString()!, StringComparison.Ordinal);
        Assert.Equal(200, (int)alone.StatusCode);
    }

    [Fact]
    public async Task Every_fault_of_a_document_is_told_at_once()
    {
        var errors = (await caller.PostDrawing(Documents.SmallWith(small =>
        {
            small["agent"] = "watre";
            small["runs"]![0]!["bore"] = "0 mm";
        })).Fault(422)).GetProperty("errors");

        Assert.Equal(2, errors.EnumerateObject().Count());
    }

    [Theory]
    [InlineData("Limits:DrawingPoints", "3", "/points")]
    [InlineData("Limits:DrawingParts", "3", "")]
    public async Task More_than_the_limit_is_a_422_that_says_the_limit(string setting, string value, string place)
    {
        await using var small = Service.With((setting, value));
        using var limited = small.Caller();

        var fault = await limited.PostDrawing(Documents.Demo).Fault(422);

        Assert.Contains(value, fault.GetProperty("errors").GetProperty(place)[0].GetString()!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Answer_that_takes_too_long_is_a_422_that_says_so()
    {
        await using var hurried = Service.With(("Limits:DrawingTime", "00:00:00.001"), ("Limits:DrawingPoints", "5000"));
        using var limited = hurried.Caller();

        var fault = await limited.PostDrawing(Documents.Chain(5_000)).Fault(422);

        Assert.Contains("0.001 s", fault.GetProperty("errors").GetProperty("")[0].GetString()!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Five_hundred_points_are_within_the_limits()
    {
        await using var patient = Service.With(("Limits:DrawingTime", "00:01:00"));
        using var limited = patient.Caller();

        using var answer = await limited.PostDrawing(Documents.Chain(500));

        Assert.Equal(200, (int)answer.StatusCode);
    }

    [Fact]
    public async Task Every_document_however_hostile_gets_a_drawing_of_finite_numbers_or_a_stated_fault()
    {
        var count = HostileCalls.IsLong ? 20_000 : 600;
        await using var patient = Service.With(("Limits:DrawingTime", "00:00:40"));
        using var limited = patient.Caller();
        ConcurrentQueue<string> wrong = new();
        ConcurrentDictionary<int, int> statuses = new();
        await Parallel.ForAsync(HostileCalls.FirstSeed, HostileCalls.FirstSeed + count, TestContext.Current.CancellationToken, async (seed, cancel) =>
        {
            var document = seed % 2 == 0 ? HostileDocuments.Of(seed) : HostileDocuments.OfBench(seed);
            using var answer = await limited.PostLayout("/v1/drawing", document, "?units=" + (seed % 3) switch { 0 => "metric", 1 => "us", _ => "si" } + (seed % 5) switch { 0 => "&colour=pressure", 1 => "&colour=share", 2 => "&colour=none", 3 => "&view=tree", _ => "" });
            var status = (int)answer.StatusCode;
            statuses.AddOrUpdate(status, 1, (_, known) => known + 1);
            var text = await answer.Content.ReadAsStringAsync(cancel);
            var why = status switch
            {
                200 => WrongWith(text),
                400 or 413 or 422 => null,
                _ => $"{status}: {text}",
            };
            if (why is not null) wrong.Enqueue($"seed {seed}: {why}\n{Encoding.UTF8.GetString(document, 0, Math.Min(document.Length, 1_500))}");
        });

        Assert.True(wrong.IsEmpty, $"{wrong.Count} of {count} documents. {string.Join("\n\n", wrong.Take(3))}");
        Assert.True(statuses.GetValueOrDefault(200) > count / 5 && statuses.GetValueOrDefault(422) > count / 5, string.Join(", ", statuses));
    }

    static string? WrongWith(string svg)
    {
        try
        {
            var bad = XDocument.Parse(svg).Descendants().FirstOrDefault(element =>
                element.Attributes().Any(attribute => attribute.Name.LocalName is not ("data-path" or "aria-label") && (attribute.Value.Contains("NaN", StringComparison.Ordinal) || attribute.Value.Contains('∞'))));
            return bad is null ? null : $"{bad}";
        }
        catch (System.Xml.XmlException notXml)
        {
            return notXml.Message;
        }
    }

    static string Placeless => """
        { "format": 1, "agent": "water", "supply": { "pressure": "12 bar" },
          "points": [ { "id": "S", "kind": "supply" }, { "id": "N", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5" } ],
          "runs": [ { "from": "S", "to": "N", "tube": "CU-6x1", "length": "1 m" } ] }
        """;
}

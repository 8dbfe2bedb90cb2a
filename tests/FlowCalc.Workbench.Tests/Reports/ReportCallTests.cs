using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using FlowCalc.Examples;
using FlowCalc.Workbench.Tests.Hosting;

namespace FlowCalc.Workbench.Tests.Reports;

public sealed class ReportCallTests(Site site)
{
    static string Demo => Encoding.UTF8.GetString(ExampleCatalogue.Find("raid-pickup")!.Value.Span);

    [Fact]
    public async Task Page_needs_nothing_else_runs_nothing_and_shows_what_the_query_holds_as_text()
    {
        using var answer = await PostAsync(Demo, "?by=%3Cscript%3Ealert(1)%3C/script%3E&date=%22%3E%3Cimg%20src=x%3E");

        Assert.Equal("text/html; charset=utf-8", answer.Content.Headers.ContentType!.ToString());
        Assert.StartsWith("default-src 'none'; style-src 'unsafe-inline'; img-src data:", answer.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
        var page = await TextAsync(answer);
        Assert.StartsWith("<!DOCTYPE html>", page, StringComparison.Ordinal);
        foreach (var word in (string[])["<script", "<img", "<link", " src=\"", " href=\"", "url(", "@import"]) Assert.DoesNotContain(word, page, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("&lt;script&gt;alert(1)&lt;/script&gt;", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Cab & co: \"left\"; filename=x\r\n", "cab-co-left-filename-x.pdf")]
    [InlineData("日本", "report.pdf")]
    [InlineData("../../etc/passwd", "etc-passwd.pdf")]
    public async Task File_has_a_safe_name_of_its_title(string title, string name)
    {
        var document = JsonNode.Parse(Demo)!;
        document["title"] = title.Trim();

        using var answer = await PostAsync(document.ToJsonString(), "?format=pdf");

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("application/pdf", answer.Content.Headers.ContentType!.ToString());
        Assert.Equal($"inline; filename=\"{name}\"", answer.Content.Headers.GetValues("Content-Disposition").Single());
    }

    [Fact]
    public async Task Every_fault_of_a_query_is_told_at_once()
    {
        using var answer = await PostAsync(Demo, "?format=doc&paper=a5&by=&date=1&date=2");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        using var problem = JsonDocument.Parse(await TextAsync(answer));
        Assert.Equal(["?format", "?paper", "?date", "?by"], problem.RootElement.GetProperty("errors").EnumerateObject().Select(error => error.Name));
    }

    [Theory]
    [InlineData("?paper=a5")]
    [InlineData("?by=%01")]
    [InlineData("?units=imperial")]
    [InlineData("?colour=red")]
    [InlineData("?date=0123456789012345678901234567890123456789012345678901234567890123456789012345678901234567890123456789x")]
    public async Task Query_that_does_not_fit_is_refused(string query)
    {
        using var answer = await PostAsync(Demo, query);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType!.ToString());
    }

    [Fact]
    public async Task Layout_whose_flow_is_not_found_is_refused_as_by_the_flow()
    {
        // Colder than it was charged, by far: the bottle comes below the surroundings.
        var document = JsonNode.Parse(Demo)!;
        document["ambientPressure"] = "19 bara";

        using var answer = await PostAsync(document.ToJsonString());
        using var flow = await PostAsync(document.ToJsonString(), path: "/v1/flow");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Equal(await TextAsync(flow), await TextAsync(answer));
    }

    [Fact]
    public async Task Layout_of_two_hundred_points_has_its_report_and_one_more_point_is_refused()
    {
        using var answer = await PostAsync(Comb(66), "?format=pdf");
        using var refused = await PostAsync(Comb(67), "?format=pdf");

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var pdf = new ReadPdf(await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
        Assert.Empty(pdf.Outside);
        Assert.All(Enumerable.Range(0, 66), at => Assert.Contains(pdf.Lines, line => line.StartsWith($"n{at} ", StringComparison.Ordinal) || line.Contains($" n{at} ", StringComparison.Ordinal)));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
    }

    // A trunk with a tee and a short drop to a nozzle at each step: three points a nozzle, and two.
    static string Comb(int nozzles)
    {
        List<string> points = ["""{ "id": "s", "kind": "supply" }"""], runs = [];
        for (var at = 0; at < nozzles; at++)
        {
            var from = at == 0 ? "s" : $"t{at - 1}";
            points.Add($$"""{ "id": "n{{at}}", "kind": "nozzle", "kFactor": "0.3 L/min/bar^0.5" }""");
            points.Add($$"""{ "id": "x{{at}}", "kind": "reducer" }""");
            points.Add(at == nozzles - 1 ? $$"""{ "id": "t{{at}}", "kind": "reducer" }""" : $$"""{ "id": "t{{at}}", "kind": "tee", "fedThrough": "run" }""");
            runs.Add($$"""{ "from": "{{from}}", "to": "t{{at}}", "bore": "12 mm", "length": "20 cm"{{(at == 0 ? "" : ", \"leaves\": \"run\"")}} }""");
            runs.Add($$"""{ "from": "t{{at}}", "to": "x{{at}}", "bore": "6 mm", "length": "10 cm"{{(at == nozzles - 1 ? "" : ", \"leaves\": \"branch\"")}} }""");
            runs.Add($$"""{ "from": "x{{at}}", "to": "n{{at}}", "bore": "5 mm", "length": "10 cm" }""");
        }
        return $$"""
            { "format": 1, "agent": "water", "ambientPressure": "1 bara", "temperature": "20 °C",
              "supply": { "bottle": { "volume": "6 L", "fill": "4 kg", "chargePressure": "14 bar", "chargeTemperature": "20 °C" } },
              "cases": { "temperatures": ["20 °C"], "attitudes": [{ "name": "upright", "gravity": [0, 0, -1] }] },
              "points": [{{string.Join(',', points)}}], "runs": [{{string.Join(',', runs)}}] }
            """;
    }

    async Task<HttpResponseMessage> PostAsync(string document, string query = "", string path = "/v1/report")
    {
        using var caller = new HttpClient { BaseAddress = site.Address };
        using var body = new ByteArrayContent(Encoding.UTF8.GetBytes(document));
        body.Headers.ContentType = new("application/json");
        return await caller.PostAsync(new Uri(path + query, UriKind.Relative), body, TestContext.Current.CancellationToken);
    }

    static Task<string> TextAsync(HttpResponseMessage answer) => answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
}

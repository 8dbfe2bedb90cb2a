using System.Text;
using System.Text.Json;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Flow;

public sealed class FlowFaultTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Theory]
    [InlineData("")]
    [InlineData("  \r\n\t ")]
    public async Task Empty_body_is_refused_with_what_to_send(string body)
    {
        var fault = await caller.PostFlow(body).Fault(400);

        Assert.Contains("empty", Detail(fault), StringComparison.Ordinal);
        Assert.Contains("/v1/examples", Detail(fault), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{ \"format\": 1, \"agent\": }", "line 1, byte 25")]
    [InlineData("{\n  \"format\": 1,\n  \"agent\" \"water\"\n}", "line 3, byte 11")]
    [InlineData("{ \"format\": 1", "line 1")]
    [InlineData("nonsense", "line 1, byte")]
    [InlineData("{ \"format\": NaN }", "line 1")]
    [InlineData("{ 'format': 1 }", "line 1, byte 3")]
    public async Task Body_that_is_not_JSON_is_refused_with_line_and_byte(string body, string place)
    {
        var fault = await caller.PostFlow(body).Fault(400);

        Assert.Contains(place, Detail(fault), StringComparison.Ordinal);
        Assert.DoesNotContain("LineNumber", Detail(fault), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(" {}")]
    [InlineData("x")]
    [InlineData("]")]
    [InlineData("\0")]
    public async Task Anything_after_the_document_is_refused(string rest) => await caller.PostFlow(Documents.Small + rest).Fault(400);

    [Fact]
    public async Task Bytes_that_are_not_UTF_8_are_refused_with_their_offset()
    {
        byte[] body = [.. Encoding.UTF8.GetBytes("{\"title\":\""), 0xC3, 0x28, .. Encoding.UTF8.GetBytes("\"}")];

        var fault = await caller.PostFlow(body).Fault(400);

        Assert.Contains("offset 10", Detail(fault), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Byte_order_mark_is_passed_over()
    {
        byte[] body = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Documents.Small)];

        await caller.PostFlow(body).Json(200);
    }

    [Fact]
    public async Task UTF_16_is_refused()
    {
        await caller.PostFlow(Encoding.Unicode.GetBytes(Documents.Small)).Fault(400);
        await caller.PostFlow(Encoding.Unicode.GetBytes(Documents.Small), contentType: "application/json; charset=utf-16").Fault(415);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("text/plain")]
    [InlineData("application/xml")]
    [InlineData("application/jsonx")]
    [InlineData("application/json; charset=iso-8859-1")]
    [InlineData("multipart/form-data; boundary=x")]
    public async Task Content_type_that_is_not_JSON_in_UTF_8_is_refused(string? type)
    {
        var fault = await caller.PostFlow(Encoding.UTF8.GetBytes(Documents.Small), contentType: type).Fault(415);

        Assert.Contains("application/json", Detail(fault), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("application/json; charset=utf-8")]
    [InlineData("application/json;charset=\"UTF-8\"")]
    [InlineData("Application/JSON")]
    [InlineData("application/layout+json")]
    public async Task Content_types_of_JSON_are_taken(string type) => await caller.PostFlow(Documents.Small, contentType: type).Json(200);

    [Fact]
    public async Task Compressed_body_is_refused()
    {
        using var content = new ByteArrayContent([1, 2, 3]);
        content.Headers.ContentType = new("application/json");
        content.Headers.ContentEncoding.Add("gzip");

        var fault = await caller.PostAsync(new Uri("/v1/flow", UriKind.Relative), content, TestContext.Current.CancellationToken).Fault(415);

        Assert.Contains("gzip", Detail(fault), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_fault_of_a_layout_is_told_at_once_with_its_pointer()
    {
        var document = Documents.SmallWith(layout =>
        {
            layout["supply"]!["pressure"] = 12;
            layout["colour"] = "red";
            layout["runs"]![0]!["bore"] = "6,0 mm";
            layout["runs"]![2]!["to"] = "rigth";
        });

        var fault = await caller.PostFlow(document).Fault(422);

        var errors = fault.GetProperty("errors");
        string[] pointers = ["/supply/pressure", "/colour", "/runs/0/bore", "/runs/2/to"];
        foreach (var pointer in pointers)
            Assert.NotEmpty(errors.GetProperty(pointer)[0].GetString()!);
        Assert.Contains("bar", errors.GetProperty("/supply/pressure")[0].GetString()!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("1")]
    [InlineData("\"text\"")]
    [InlineData("{}")]
    public async Task JSON_that_is_no_layout_is_a_422_with_errors(string body)
    {
        var fault = await caller.PostFlow(body).Fault(422);

        Assert.NotEmpty(fault.GetProperty("errors").EnumerateObject());
    }

    [Theory]
    [InlineData("?units=imperial", "?units", "metric, us and si")]
    [InlineData("?units=", "?units", "metric, us and si")]
    [InlineData("?units=US", "?units", "metric, us and si")]
    [InlineData("?units=si&units=us", "?units", "once")]
    [InlineData("?unit=us", "?unit", "units")]
    [InlineData("?units=us&x=1", "?x", "units")]
    public async Task Query_that_does_not_fit_is_refused_with_what_fits(string query, string key, string message)
    {
        var fault = await caller.PostFlow(Documents.Small, query).Fault(422);

        Assert.Contains(message, fault.GetProperty("errors").GetProperty(key)[0].GetString()!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Deep_nesting_is_refused()
    {
        var deep = new string('[', 5_000) + new string(']', 5_000);

        await caller.PostFlow("{\"note\":" + deep + "}").Fault(400);
    }

    static string Detail(JsonElement fault) => fault.GetProperty("detail").GetString()!;
}

using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;

namespace FlowCalc.Api.Tests.Requests;

/// <summary>How the tests call the service.</summary>
static class Calls
{
    public static Task<HttpResponseMessage> PostFlow(this HttpClient caller, string document, string query = "", string contentType = "application/json") =>
        caller.PostFlow(Encoding.UTF8.GetBytes(document), query, contentType);

    public static Task<HttpResponseMessage> PostFlow(this HttpClient caller, byte[] document, string query = "", string? contentType = "application/json") =>
        caller.PostLayout("/v1/flow", document, query, contentType);

    public static Task<HttpResponseMessage> PostDischarge(this HttpClient caller, string document, string query = "", string contentType = "application/json") =>
        caller.PostLayout("/v1/discharge", Encoding.UTF8.GetBytes(document), query, contentType);

    /// <summary>Posts the request of a study, such as <c>compare</c>.</summary>
    public static Task<HttpResponseMessage> PostStudy(this HttpClient caller, string call, string request, string query = "") =>
        caller.PostLayout("/v1/" + call, Encoding.UTF8.GetBytes(request), query);

    public static Task<HttpResponseMessage> PostCutList(this HttpClient caller, string document, string query = "", string contentType = "application/json") =>
        caller.PostLayout("/v1/cut-list", Encoding.UTF8.GetBytes(document), query, contentType);

    public static Task<HttpResponseMessage> PostDrawing(this HttpClient caller, string document, string query = "") =>
        caller.PostLayout("/v1/drawing", Encoding.UTF8.GetBytes(document), query);

    public static Task<HttpResponseMessage> PostMount(this HttpClient caller, string document, string query = "", string contentType = "application/json") =>
        caller.PostLayout("/v1/mount", Encoding.UTF8.GetBytes(document), query, contentType);
    public static Task<HttpResponseMessage> PostCircuit(this HttpClient caller, string document, string query = "") =>
        caller.PostLayout("/v1/circuit", Encoding.UTF8.GetBytes(document), query);

    public static Task<HttpResponseMessage> PostUpkeep(this HttpClient caller, string document, string query = "") =>
        caller.PostLayout("/v1/upkeep", Encoding.UTF8.GetBytes(document), query);

    public static Task<HttpResponseMessage> PostCheck(this HttpClient caller, string document, string query = "") =>
        caller.PostLayout("/v1/check", Encoding.UTF8.GetBytes(document), query);

    public static Task<HttpResponseMessage> PostCoverage(this HttpClient caller, string document, string query = "") =>
        caller.PostLayout("/v1/coverage", Encoding.UTF8.GetBytes(document), query);

    public static Task<HttpResponseMessage> PostCalibration(this HttpClient caller, string document, string query = "") =>
        caller.PostLayout("/v1/calibrate", Encoding.UTF8.GetBytes(document), query);

    public static async Task<HttpResponseMessage> PostLayout(this HttpClient caller, string path, byte[] document, string query = "", string? contentType = "application/json")
    {
        using var content = new ByteArrayContent(document);
        content.Headers.ContentType = contentType is null ? null : MediaTypeHeaderValue.Parse(contentType);
        return await caller.PostAsync(new Uri(path + query, UriKind.Relative), content, TestContext.Current.CancellationToken);
    }

    /// <summary>The body of an answer, whatever its status.</summary>
    public static async Task<string> Text(this Task<HttpResponseMessage> asked)
    {
        using var response = await asked;
        return await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }

    public static Task<HttpResponseMessage> Get(this HttpClient caller, string path) => caller.GetAsync(new Uri(path, UriKind.Relative), TestContext.Current.CancellationToken);

    /// <summary>The JSON of an answer of the status expected.</summary>
    public static async Task<JsonElement> Json(this Task<HttpResponseMessage> asked, int status)
    {
        using var response = await asked;
        var text = await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.True(status == (int)response.StatusCode, $"{(int)response.StatusCode}: {text}");
        using var document = JsonDocument.Parse(text);
        return document.RootElement.Clone();
    }

    /// <summary>The problem details of a fault of the status expected.</summary>
    public static async Task<JsonElement> Fault(this Task<HttpResponseMessage> asked, int status)
    {
        using var response = await asked;
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.ToString());
        var problem = await Task.FromResult(response).Json(status);
        Assert.Equal(status, problem.GetProperty("status").GetInt32());
        Assert.NotEmpty(problem.GetProperty("detail").GetString()!);
        Assert.NotEmpty(problem.GetProperty("title").GetString()!);
        return problem;
    }

    public static double Value(this JsonElement quantity) => quantity.GetProperty("value").GetDouble();
}

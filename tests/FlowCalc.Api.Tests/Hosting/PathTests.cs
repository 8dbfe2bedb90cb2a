using System.Net;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Hosting;

public sealed class PathTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Theory]
    [InlineData("/nowhere")]
    [InlineData("/v1")]
    [InlineData("/v1/flows")]
    [InlineData("/v1/agents/water/density")]
    public async Task Path_that_is_not_there_is_a_404_with_problem_details(string path)
    {
        var fault = await caller.Get(path).Fault(404);

        Assert.Contains("/openapi/v1.json", fault.GetProperty("detail").GetString()!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("GET", "/v1/flow", "POST")]
    [InlineData("DELETE", "/v1/agents", "GET")]
    [InlineData("POST", "/health/live", "GET")]
    public async Task Method_that_a_path_does_not_take_is_a_405_that_says_which_it_takes(string method, string path, string takes)
    {
        using var request = new HttpRequestMessage(new HttpMethod(method), new Uri(path, UriKind.Relative));
        using var response = await caller.SendAsync(request, TestContext.Current.CancellationToken);

        var fault = await Task.FromResult(response).Fault(405);

        Assert.Contains($"it takes {takes}", fault.GetProperty("detail").GetString()!, StringComparison.Ordinal);
        Assert.Equal([takes], response.Content.Headers.Allow);
    }

    [Fact]
    public async Task Fault_is_told_even_to_a_caller_who_accepts_only_HTML()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri("/nowhere", UriKind.Relative));
        request.Headers.Accept.ParseAdd("text/html");

        await caller.SendAsync(request, TestContext.Current.CancellationToken).Fault(404);
    }

    [Fact]
    public async Task Root_is_the_workbench_and_leads_a_browser_without_script_to_the_calls()
    {
        using var response = await caller.Get("/");

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal("text/html", response.Content.Headers.ContentType?.MediaType);
        Assert.Contains("""<a href="/docs">""", await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/v1/agents")]
    [InlineData("/nowhere")]
    [InlineData("/docs/")]
    public async Task Every_answer_forbids_sniffing_and_names_no_server(string path)
    {
        using var response = await caller.Get(path);

        Assert.Equal("nosniff", Assert.Single(response.Headers.GetValues("X-Content-Type-Options")));
        Assert.False(response.Headers.Contains("Server"));
        Assert.False(response.Headers.Contains("Access-Control-Allow-Origin"));
    }
}

using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Catalogue;

public sealed class ExampleTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Fact]
    public async Task Every_example_that_is_listed_is_served_and_has_a_flow()
    {
        var answer = await caller.Get("/v1/examples").Json(200);

        var names = answer.GetProperty("examples").EnumerateArray().Select(example => example.GetProperty("name").GetString()!).ToList();
        Assert.Contains("raid-pickup", names);
        foreach (var name in names)
        {
            Assert.Matches("^[a-z0-9-]+$", name);
            using var document = await caller.Get("/v1/examples/" + name);
            var text = await document.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
            await caller.PostFlow(text).Json(200);
        }
    }

    [Fact]
    public async Task Example_is_the_bare_document_byte_for_byte()
    {
        using var response = await caller.Get("/v1/examples/raid-pickup");

        Assert.Equal("application/json; charset=utf-8", response.Content.Headers.ContentType?.ToString());
        Assert.Equal(Documents.Demo, await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData("/v1/examples/nowhere")]
    [InlineData("/v1/examples/..%2Fsources")]
    public async Task Example_that_is_not_there_is_a_404(string path) => await caller.Get(path).Fault(404);

    [Theory]
    [InlineData("/v1/examples?units=us")]
    [InlineData("/v1/examples/raid-pickup?pretty=1")]
    [InlineData("/v1/layout-schema?x")]
    public async Task Query_where_none_is_taken_is_refused(string path) => await caller.Get(path).Fault(422);

    [Fact]
    public async Task Schema_of_the_layout_is_served_as_what_it_is()
    {
        using var response = await caller.Get("/v1/layout-schema");

        var schema = await Task.FromResult(response).Json(200);
        Assert.Equal("application/schema+json", response.Content.Headers.ContentType?.MediaType);
        Assert.Equal("https://json-schema.org/draft/2020-12/schema", schema.GetProperty("$schema").GetString());
    }
}

using System.Text.Json;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Documentation;

public sealed class ContractTests(Service service)
{
    const string NoContent = "204";

    static readonly string Committed = Path.Combine(AppContext.BaseDirectory, "openapi", "v1.json");

    [Fact]
    public async Task Served_contract_is_the_one_that_is_kept_beside_the_code()
    {
        await using var shipped = Service.AsShipped();
        using var caller = shipped.Caller();
        using var response = await caller.Get("/openapi/v1.json");
        var served = await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);

        await KeptAnswers.Keep(Path.Combine("openapi", "v1.json"), served);

        Assert.Equal(await File.ReadAllTextAsync(Committed, TestContext.Current.CancellationToken), served);
    }

    [Fact]
    public async Task Contract_is_OpenAPI_3_1_with_every_reference_resolved()
    {
        var contract = await Contract.Published();

        Assert.StartsWith("3.1", contract.Document.GetProperty("openapi").GetString(), StringComparison.Ordinal);
        var schemas = contract.Document.GetProperty("components").GetProperty("schemas").EnumerateObject().Select(schema => "#/components/schemas/" + schema.Name).ToHashSet();
        var references = References(contract.Document).ToList();
        Assert.True(references.Count > 50, $"{references.Count} references");
        Assert.All(references, reference => Assert.Contains(reference, schemas));
    }

    [Fact]
    public async Task Contract_is_read_without_an_error_by_a_general_OpenAPI_reader()
    {
        using var caller = service.Caller();
        using var response = await caller.Get("/openapi/v1.json");
        await using var text = await response.Content.ReadAsStreamAsync(TestContext.Current.CancellationToken);

        var read = await Microsoft.OpenApi.OpenApiDocument.LoadAsync(text, "json", null, TestContext.Current.CancellationToken);

        Assert.NotNull(read.Document);
        Assert.Empty(read.Diagnostic!.Errors);
    }

    [Fact]
    public async Task Every_call_has_a_name_a_summary_a_description_a_tag_and_an_example_of_each_answer()
    {
        var contract = await Contract.Published();

        var operations = contract.Operations().ToList();
        Assert.Equal(28, operations.Count);
        foreach (var (path, _, operation) in operations)
        {
            foreach (var field in (string[])["operationId", "summary", "description"])
                Assert.False(string.IsNullOrWhiteSpace(operation.GetProperty(field).GetString()), $"{path}: {field}");
            Assert.NotEmpty(operation.GetProperty("tags").EnumerateArray());
            foreach (var response in operation.GetProperty("responses").EnumerateObject())
            {
                Assert.False(string.IsNullOrWhiteSpace(response.Value.GetProperty("description").GetString()), $"{path} {response.Name}: description");
                if (response.Name == NoContent) continue;
                Assert.All(response.Value.GetProperty("content").EnumerateObject(), media => Assert.True(Examples(media.Value).Any(), $"{path} {response.Name}: no example of {media.Name}"));
            }
            if (operation.TryGetProperty("parameters", out var parameters))
                foreach (var parameter in parameters.EnumerateArray())
                {
                    Assert.False(string.IsNullOrWhiteSpace(parameter.GetProperty("description").GetString()), $"{path}: a parameter without description");
                    Assert.True(parameter.TryGetProperty("example", out _), $"{path}: a parameter without example");
                }
        }
    }

    [Fact]
    public async Task Every_field_of_every_answer_is_described()
    {
        var contract = await Contract.Published();

        foreach (var schema in contract.Document.GetProperty("components").GetProperty("schemas").EnumerateObject().Where(schema => schema.Name.Split('.')[0] is not ("Layout" or "LayoutDocument")))
        {
            Assert.True(schema.Value.TryGetProperty("description", out _), schema.Name);
            if (!schema.Value.TryGetProperty("properties", out var fields))
                continue;
            foreach (var field in fields.EnumerateObject())
                Assert.True(field.Value.GetRawText().Contains("\"description\"", StringComparison.Ordinal), $"{schema.Name}.{field.Name}");
        }
    }

    [Theory]
    [InlineData("/v1/flow", "100000 points", "layout", "no-answer", "time", "query")]
    [InlineData("/v1/discharge", "500 points", "layout", "no-answer", "time", "query")]
    [InlineData("/v1/cut-list", "10000 points", "layout", "too-much", "time", "query")]
    [InlineData("/v1/report", "200 points", "layout", "no-answer", "too-much", "time", "query")]
    [InlineData("/v1/mount", "10000 points", "layout", "time", "query")]
    [InlineData("/v1/circuit", "10000 points", "layout", "no-circuit", "time", "query")]
    [InlineData("/v1/upkeep", "10000 points", "layout", "no-service", "day", "time", "query")]
    [InlineData("/v1/exchange", "100000 points", "layout", "no-answer", "not-written", "time", "query")]
    [InlineData("/v1/check", "200 points", "layout", "too-much", "time", "query")]
    [InlineData("/v1/coverage", "500 points", "layout", "no-coverage", "too-much", "time", "query")]
    [InlineData("/v1/calibrate", "500 points", "layout", "no-test", "no-answer", "time", "query")]
    public async Task Call_on_a_layout_states_its_limits_every_fault_and_the_layout_as_its_body(string path, string points, params string[] unprocessable)
    {
        var contract = await Contract.Published();

        var call = contract.Operations().Single(operation => operation.Path == path).Operation;
        var description = call.GetProperty("description").GetString()!;
        foreach (var limit in (string[])["50331648 bytes", points, path switch { "/v1/report" or "/v1/check" => "20 s", "/v1/coverage" => "8 s", _ => "4 s" }])
            Assert.Contains(limit, description, StringComparison.Ordinal);
        var responses = call.GetProperty("responses");
        Assert.Equal(["200", "400", "401", "408", "413", "415", "422", "429", "500"], responses.EnumerateObject().Select(response => response.Name));
        Assert.Equal(
            unprocessable,
            responses.GetProperty("422").GetProperty("content").GetProperty("application/problem+json").GetProperty("examples").EnumerateObject().Select(example => example.Name));
        Assert.Equal(
            "#/components/schemas/LayoutDocument",
            call.GetProperty("requestBody").GetProperty("content").GetProperty("application/json").GetProperty("schema").GetProperty("$ref").GetString());
        Assert.True(contract.Document.GetProperty("components").GetProperty("schemas").GetProperty("LayoutDocument").GetProperty("properties").TryGetProperty("runs", out _));
    }

    [Fact]
    public async Task Every_example_of_the_contract_fits_the_schema_beside_it()
    {
        var contract = await Contract.Published();

        var seen = 0;
        foreach (var (path, method, operation) in contract.Operations())
            foreach (var response in operation.GetProperty("responses").EnumerateObject().Where(response => response.Name != NoContent))
            {
                var media = response.Value.GetProperty("content").EnumerateObject().First().Value;
                if (media.GetProperty("schema").TryGetProperty("$ref", out _))
                    foreach (var example in Examples(media))
                    {
                        Assert.Empty(contract.Breaks(contract.SchemaOf(path, method, response.Name), example));
                        seen++;
                    }
            }
        foreach (var path in (string[])["/v1/flow", "/v1/discharge", "/v1/cut-list", "/v1/mount", "/v1/circuit", "/v1/upkeep", "/v1/check", "/v1/coverage", "/v1/calibrate"])
        {
            var body = contract.Operations().Single(operation => operation.Path == path).Operation.GetProperty("requestBody").GetProperty("content").GetProperty("application/json");
            Assert.Empty(contract.Breaks("LayoutDocument", body.GetProperty("example")));
        }
        foreach (var (path, schema) in (ReadOnlySpan<(string, string)>)[("/v1/compare", "Study.comparison"), ("/v1/tolerance", "Study.tolerance"), ("/v1/size", "Study.sizing")])
        {
            var body = contract.Operations().Single(operation => operation.Path == path).Operation.GetProperty("requestBody").GetProperty("content").GetProperty("application/json");
            Assert.Equal("#/components/schemas/" + schema, body.GetProperty("schema").GetProperty("$ref").GetString());
            Assert.Empty(contract.Breaks(schema, body.GetProperty("example")));
        }
        Assert.True(seen > 30, $"{seen} examples");
    }

    static IEnumerable<JsonElement> Examples(JsonElement media)
    {
        if (media.TryGetProperty("example", out var one))
            yield return one;
        if (media.TryGetProperty("examples", out var several))
            foreach (var example in several.EnumerateObject())
                yield return example.Value.GetProperty("value");
    }

    static IEnumerable<string> References(JsonElement node) => node.ValueKind switch
    {
        JsonValueKind.Object => node.EnumerateObject().SelectMany(field =>
            field is { Name: "$ref", Value.ValueKind: JsonValueKind.String } ? [field.Value.GetString()!] : References(field.Value)),
        JsonValueKind.Array => node.EnumerateArray().SelectMany(References),
        _ => [],
    };
}

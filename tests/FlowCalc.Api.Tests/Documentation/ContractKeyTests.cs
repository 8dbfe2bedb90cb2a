using System.Net;
using System.Text.Json;
using FlowCalc.Api.Tests.Access;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Documentation;

public sealed class ContractKeyTests
{
    static readonly IPAddress Stranger = IPAddress.Parse("192.0.2.7");

    [Fact]
    public async Task Calls_that_refuse_a_stranger_without_a_key_are_those_of_which_the_contract_says_so()
    {
        var contract = await Contract.Published();
        await using var service = new CallerFrom(Stranger, ("Access:Keys:0", "a-key-of-a-workshop-42"));
        using var caller = service.Caller();

        var asking = 0;
        foreach (var (path, method, operation) in contract.Operations())
        {
            using var request = new HttpRequestMessage(HttpMethod.Parse(method), path.Replace("{id}", "x", StringComparison.Ordinal).Replace("{name}", "x", StringComparison.Ordinal));
            using var answer = await caller.SendAsync(request, TestContext.Current.CancellationToken);

            var asks = operation.TryGetProperty("security", out var keys);
            Assert.True(asks == (answer.StatusCode == HttpStatusCode.Unauthorized), $"{method} {path}: {answer.StatusCode}");
            Assert.True(asks == operation.GetProperty("responses").TryGetProperty("401", out _), $"{method} {path}: 401");
            if (!asks) continue;
            asking++;
            // The last one, empty, stands for callers who are asked for none.
            Assert.Equal(["key", "password", ""], keys.EnumerateArray().Select(way => string.Join(", ", way.EnumerateObject().Select(scheme => scheme.Name))));
            Assert.Empty(contract.Breaks(contract.SchemaOf(path, method, "401"), await Body(answer)));
        }
        Assert.Equal(26, asking);
    }

    [Fact]
    public async Task Ways_to_send_a_key_are_those_that_the_refusal_names()
    {
        var contract = await Contract.Published();
        await using var service = new CallerFrom(Stranger);
        using var caller = service.Caller();
        using var refused = await caller.Get("/v1/agents");

        var schemes = contract.Document.GetProperty("components").GetProperty("securitySchemes").EnumerateObject().Select(scheme => scheme.Value).ToList();
        Assert.All(schemes, scheme => Assert.Equal("http", scheme.GetProperty("type").GetString()));
        Assert.Equal(
            refused.Headers.WwwAuthenticate.Select(way => way.Scheme).Order(StringComparer.OrdinalIgnoreCase),
            schemes.Select(scheme => scheme.GetProperty("scheme").GetString()!).Order(StringComparer.OrdinalIgnoreCase),
            StringComparer.OrdinalIgnoreCase);
    }

    static async Task<JsonElement> Body(HttpResponseMessage answer) =>
        JsonDocument.Parse(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)).RootElement;
}

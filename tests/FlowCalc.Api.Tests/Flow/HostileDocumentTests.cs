using System.Collections.Concurrent;
using System.Text;
using System.Text.Json;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Flow;

/// <summary>10 000 documents; 100 000 where the environment says <c>FLOWCALC_LONG=1</c>; from the seed in <c>FLOWCALC_SEED</c> on.</summary>
public sealed class HostileDocumentTests
{
    static readonly bool IsLong = Environment.GetEnvironmentVariable("FLOWCALC_LONG") == "1";
    static readonly int Count = IsLong ? 100_000 : 10_000;
    static readonly int FirstSeed = int.TryParse(Environment.GetEnvironmentVariable("FLOWCALC_SEED"), out var seed) ? seed : 0;

    [Fact]
    public async Task Every_document_however_hostile_gets_a_finite_answer_or_a_stated_fault_in_time()
    {
        // Beside all other tests on a small machine a request may wait for its turn; alone it keeps the usual limit.
        await using var service = IsLong ? new Service() : Service.With(("Limits:FlowTime", "00:00:20"));
        using var caller = service.Caller();
        var (statuses, wrong) = (new ConcurrentDictionary<int, int>(), new ConcurrentQueue<string>());

        await Parallel.ForAsync(FirstSeed, FirstSeed + Count, TestContext.Current.CancellationToken, async (seed, cancel) =>
        {
            var document = HostileDocuments.Of(seed);
            using var response = await caller.PostFlow(document, (seed % 3) switch { 0 => "", 1 => "?units=us", _ => "?units=si" });
            var answer = await response.Content.ReadAsByteArrayAsync(cancel);

            var status = (int)response.StatusCode;
            statuses.AddOrUpdate(status, 1, (_, known) => known + 1);
            if (Wrong(status, response.Content.Headers.ContentType?.MediaType, answer) is { } why)
                wrong.Enqueue($"seed {seed}: {why}\n{Encoding.UTF8.GetString(document, 0, Math.Min(document.Length, 1_500))}");
        });

        Assert.True(wrong.IsEmpty, $"{wrong.Count} of {Count} documents. {string.Join("\n\n", wrong.Order(StringComparer.Ordinal).Take(3))}");
        // A generator that the first check refuses every time would test nothing.
        TestContext.Current.TestOutputHelper?.WriteLine(string.Join(", ", statuses.OrderBy(known => known.Key).Select(known => $"{known.Key}: {known.Value}")));
        Assert.True(statuses.GetValueOrDefault(200) > Count / 5, $"{statuses.GetValueOrDefault(200)} of {Count} had an answer.");
        Assert.True(statuses.GetValueOrDefault(422) > Count / 5, $"{statuses.GetValueOrDefault(422)} of {Count} made no sense.");
        Assert.True(statuses.GetValueOrDefault(400) > Count / 100, $"{statuses.GetValueOrDefault(400)} of {Count} were not JSON.");
    }

    static string? Wrong(int status, string? type, byte[] answer)
    {
        if (status is not (200 or 400 or 413 or 422))
            return $"status {status}: {Encoding.UTF8.GetString(answer)}";
        if (type != (status == 200 ? "application/json" : "application/problem+json"))
            return $"content type {type}";
        try
        {
            using var json = JsonDocument.Parse(answer);
            if (!IsFinite(json.RootElement))
                return "a number that is not finite";
            return status == 422 && json.RootElement.GetProperty("detail").GetString()!.Contains("too long", StringComparison.Ordinal) ? "over the time limit" : null;
        }
        catch (JsonException notJson)
        {
            return notJson.Message;
        }
    }

    static bool IsFinite(JsonElement node) => node.ValueKind switch
    {
        JsonValueKind.Number => double.IsFinite(node.GetDouble()),
        JsonValueKind.Object => node.EnumerateObject().All(field => IsFinite(field.Value)),
        JsonValueKind.Array => node.EnumerateArray().All(IsFinite),
        _ => true,
    };
}

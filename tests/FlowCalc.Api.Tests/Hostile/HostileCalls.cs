using System.Collections.Concurrent;
using System.Text;
using System.Text.Json;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Hostile;

/// <summary>Sends hostile documents to a call, and keeps what was wrong with an answer.</summary>
/// <param name="path">The call.</param>
/// <param name="documentOf">The document of a seed.</param>
/// <param name="explains">Whether to ask for an explanation too.</param>
sealed class HostileCalls(string path, Func<int, byte[]> documentOf, bool explains = false)
{
    readonly ConcurrentDictionary<int, int> statuses = new();
    readonly ConcurrentQueue<string> wrong = new();

    /// <summary>Whether the environment asks for many more of them.</summary>
    public static bool IsLong { get; } = Environment.GetEnvironmentVariable("FLOWCALC_LONG") == "1";

    /// <summary>How many documents to send: what <c>FLOWCALC_COUNT</c> says, else few, or many where the run is a long one.</summary>
    public static int Count(int few, int many) => int.TryParse(Environment.GetEnvironmentVariable("FLOWCALC_COUNT"), out var count) ? count : IsLong ? many : few;

    /// <summary>First seed.</summary>
    public static int FirstSeed { get; } = int.TryParse(Environment.GetEnvironmentVariable("FLOWCALC_SEED"), out var seed) ? seed : 0;

    /// <summary>What was wrong, with the document.</summary>
    public IReadOnlyCollection<string> Wrong => wrong;

    /// <summary>Answers so far of a status.</summary>
    public int Of(int status) => statuses.GetValueOrDefault(status);

    /// <summary>Sends the documents of some seeds, several at once.</summary>
    /// <param name="service">The service.</param>
    /// <param name="first">First seed.</param>
    /// <param name="count">How many.</param>
    /// <param name="look">Looks at each answer of status 200; gives what is wrong with it, or null.</param>
    public async Task SendAsync(Service service, int first, int count, Func<int, byte[], JsonElement, string?>? look = null)
    {
        using var caller = service.Caller();
        await Parallel.ForAsync(first, first + count, TestContext.Current.CancellationToken, async (seed, cancel) =>
        {
            var document = documentOf(seed);
            using var response = await caller.PostLayout(path, document, (path.Contains('?', StringComparison.Ordinal) ? "&units=" : "?units=") + (seed % 3) switch { 0 => "metric", 1 => "us", _ => "si" } + (explains ? "&explain=true" : ""));
            var answer = await response.Content.ReadAsByteArrayAsync(cancel);

            var status = (int)response.StatusCode;
            statuses.AddOrUpdate(status, 1, (_, known) => known + 1);
            if (WrongWith(status, response.Content.Headers.ContentType?.MediaType, answer, json => look?.Invoke(seed, document, json)) is { } why)
                wrong.Enqueue($"seed {seed}: {why}\n{Encoding.UTF8.GetString(document, 0, Math.Min(document.Length, 1_500))}");
        });
    }

    /// <summary>Fails where an answer was wrong, or where the documents were too much alike: a generator that the first check refuses every time would test nothing.</summary>
    /// <param name="count">How many were sent.</param>
    public void AssertRight(int count)
    {
        Assert.True(wrong.IsEmpty, $"{wrong.Count} of {count} documents. {string.Join("\n\n", wrong.Order(StringComparer.Ordinal).Take(3))}");
        TestContext.Current.TestOutputHelper?.WriteLine(string.Join(", ", statuses.OrderBy(known => known.Key).Select(known => $"{known.Key}: {known.Value}")));
        Assert.True(Of(200) > count / 5, $"{Of(200)} of {count} had an answer.");
        Assert.True(Of(422) > count / 5, $"{Of(422)} of {count} made no sense.");
        Assert.True(Of(400) > count / 100, $"{Of(400)} of {count} were not JSON.");
    }

    static string? WrongWith(int status, string? type, byte[] answer, Func<JsonElement, string?> look)
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
            if (status == 200)
                return look(json.RootElement);
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

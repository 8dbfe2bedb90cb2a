using System.Text.Json.Nodes;
using FlowCalc.Examples;

namespace FlowCalc.Api.Documentation;

/// <summary>The requests and answers that the contract shows. The answers are real ones, kept beside the code so that the contract is the same text on every machine.</summary>
internal static class ContractExamples
{
    /// <summary>Name of the example layout that is solved at the start and shown throughout.</summary>
    public const string DemoName = "raid-pickup";

    const string Folder = "contract-examples/";

    /// <summary>The demo layout as it was written.</summary>
    public static ReadOnlyMemory<byte> DemoLayout { get; } =
        ExampleCatalogue.Find(DemoName) ?? throw new InvalidOperationException($"The library has no example {DemoName}.");

    /// <summary>The demo layout.</summary>
    public static JsonNode Demo() => JsonNode.Parse(DemoLayout.Span)!;

    /// <summary>The request of a study by the call's name: a small question about the demo layout.</summary>
    public static JsonNode Request(string call)
    {
        using var kept = typeof(ContractExamples).Assembly.GetManifestResourceStream($"{Folder}{call}-request.json")
            ?? throw new InvalidOperationException($"There is no example of a request to {call}.");
        var request = JsonNode.Parse(kept)!.AsObject();
        request.Insert(0, "layout", Demo());
        return request;
    }

    /// <summary>The answer of a call by the call's name; null where none is kept.</summary>
    public static JsonNode? Answer(string call)
    {
        using var kept = typeof(ContractExamples).Assembly.GetManifestResourceStream($"{Folder}{call}.json");
        return kept is null ? null : JsonNode.Parse(kept);
    }
}

using System.Text.Json.Nodes;
using FlowCalc.Api.Tests.Flow;

namespace FlowCalc.Api.Tests.Studies;

/// <summary>Requests of studies for the tests.</summary>
static class StudyRequests
{
    /// <summary>The request that the contract shows for a study: a small question about the demo.</summary>
    public static JsonObject Kept(string call)
    {
        using var kept = typeof(Program).Assembly.GetManifestResourceStream($"contract-examples/{call}-request.json")!;
        var request = JsonNode.Parse(kept)!.AsObject();
        request["layout"] = JsonNode.Parse(Documents.Demo);
        return request;
    }

    /// <summary>A study of the small document.</summary>
    /// <param name="rest">What the request holds beside the layout, as JSON.</param>
    /// <param name="change">Changes the layout; null for none.</param>
    public static string OfSmall(string rest, Action<JsonObject>? change = null)
    {
        var request = JsonNode.Parse(rest)!.AsObject();
        request["layout"] = JsonNode.Parse(Documents.SmallWith(change ?? (_ => { })));
        return request.ToJsonString();
    }
}

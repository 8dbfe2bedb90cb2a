using System.Text.Json;

namespace FlowCalc.Api.Size;

/// <summary>One change of the document.</summary>
/// <param name="Path">What is changed, by id.</param>
/// <param name="From">What stood there; null for nothing.</param>
/// <param name="To">What stands there now; null where it was taken away.</param>
/// <param name="Reason">What the sizes would give with this one piece left as it was; null for what only follows from other changes.</param>
public sealed record SizeChangeAnswer(string Path, JsonElement From, JsonElement To, string? Reason);

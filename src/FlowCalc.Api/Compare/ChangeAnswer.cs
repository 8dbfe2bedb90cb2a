using System.Text.Json;

namespace FlowCalc.Api.Compare;

/// <summary>One change of the base.</summary>
/// <param name="Path">What was changed, by id.</param>
/// <param name="To">What stands there in the variant; null where it was taken away.</param>
public sealed record ChangeAnswer(string Path, JsonElement To);

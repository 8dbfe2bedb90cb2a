using System.Text.Json;
using FlowCalc.Findings;

namespace FlowCalc.Api.Answers;

/// <summary>One change of a cure.</summary>
/// <param name="Path">What is changed, by id or name, such as <c>runs/R11/tube</c>.</param>
/// <param name="From">What it was, in words; null for a member that was not there.</param>
/// <param name="To">What it becomes, as the document says it; null for a member that goes.</param>
public sealed record CureChangeAnswer(string Path, JsonElement? From, JsonElement? To)
{
    internal static CureChangeAnswer Of(CureChange change) => new(change.Path, Parsed(change.From), Parsed(change.To));

    static JsonElement? Parsed(ChangeValue? value) => value is null ? null : JsonElement.Parse(value.Json);
}

using System.Text.Json.Serialization;

namespace FlowCalc.Api.Faults;

/// <summary>Why there is no answer: problem details of RFC 9457.</summary>
/// <param name="Type">Always <c>about:blank</c>: the status says what kind of problem it is.</param>
/// <param name="Title">The status in words.</param>
/// <param name="Status">The HTTP status.</param>
/// <param name="Detail">What was wrong with this request, and what would be right.</param>
/// <param name="Errors">By JSON pointer (RFC 6901) into the document, or <c>?name</c> for a query parameter: what was read there and what would be right. An empty pointer means the document as a whole.</param>
public sealed record Problem(string Type, string Title, int Status, string Detail,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] IReadOnlyDictionary<string, string[]>? Errors = null);

using System.Text.Json;

namespace FlowCalc.Layouts.Editing;

/// <summary>One change of a layout document.</summary>
/// <param name="Path">
/// What is changed: names parted by strokes, such as <c>runs/R11/tube</c> or <c>tubes/trunk/wall</c>. Points and runs go by id, attitudes by name, entries of
/// other lists by their place from 0. A stroke within a name is written <c>~1</c>, a tilde <c>~0</c>, as in a JSON pointer (RFC 6901).
/// </param>
/// <param name="Value">What stands there afterwards; null takes the member away.</param>
public readonly record struct DocumentChange(string Path, JsonElement Value);

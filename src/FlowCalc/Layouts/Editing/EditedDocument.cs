using System.Collections.Immutable;

namespace FlowCalc.Layouts.Editing;

/// <summary>A document after changes.</summary>
/// <param name="Utf8">Its text, JSON in UTF-8; with the changes that could be made.</param>
/// <param name="Pointers">JSON pointer into the text of what each change set; null where it set nothing.</param>
/// <param name="Faults">Changes that could not be made; empty where all were.</param>
public sealed record EditedDocument(ReadOnlyMemory<byte> Utf8, ImmutableArray<string?> Pointers, ImmutableArray<EditFault> Faults);

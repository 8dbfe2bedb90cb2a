using System.Collections.Immutable;
using System.Text.Json;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Editing;

namespace FlowCalc.Studies.Sizing;

/// <summary>A choice as a document to post again.</summary>
/// <param name="Document">The document, parsed.</param>
/// <param name="Layout">The layout that it reads as.</param>
/// <param name="Changes">What was set or taken away in it, by path, with what stood there; values are null where there was or is nothing.</param>
public sealed record SizedDocument(JsonElement Document, Layout Layout, ImmutableArray<(string Path, JsonElement? From, JsonElement? To)> Changes)
{
    /// <summary>Writes a choice into the document that it was chosen for. Wanted shares that hung on the size of a nozzle are written out, so that they stay what they were.</summary>
    /// <param name="request">The request.</param>
    /// <param name="choice">The choice.</param>
    /// <param name="cancellation">Ends the reading of the changed document.</param>
    /// <exception cref="InvalidOperationException">The changed document has a fault that the document had not.</exception>
    public static SizedDocument Of(SizeRequest request, SizedChoice choice, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(choice);
        using var parsed = JsonDocument.Parse(request.Document, new JsonDocumentOptions { MaxDepth = 1_000 });
        var edits = new DocumentEdits(parsed.RootElement, request, choice);
        var changes = edits.All();
        var edited = DocumentEdit.Apply(request.Document, [.. changes.Select(change => new DocumentChange(change.Path, change.To ?? default))], cancellation);
        var reading = LayoutReader.Read(edited.Utf8, new LayoutReaderOptions { MaximumPoints = int.MaxValue }, cancellation);
        if (!edited.Faults.IsEmpty || reading.Layout is not { } layout)
            throw new InvalidOperationException($"The chosen sizes make no document: {(edited.Faults.IsEmpty ? reading.Faults[0].Message : edited.Faults[0].Message)}");
        using var written = JsonDocument.Parse(edited.Utf8, new JsonDocumentOptions { MaxDepth = 1_000 });
        return new(written.RootElement.Clone(), layout, changes);
    }
}

using System.Buffers;
using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using FlowCalc.Layouts.Reading;

namespace FlowCalc.Layouts.Editing;

/// <summary>Changes a layout document by the names of its parts, so that a cure or a variant becomes a document to read.</summary>
public static class DocumentEdit
{
    static readonly JsonDocumentOptions Once = new() { MaxDepth = 1_000, AllowDuplicateProperties = false };
    static readonly JsonWriterOptions Written = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, Indented = true };

    /// <summary>Makes changes one after the other.</summary>
    /// <param name="utf8">A document that <see cref="LayoutReader"/> reads without fault.</param>
    /// <param name="changes">The changes.</param>
    /// <param name="cancellationToken">Asked at every change.</param>
    /// <returns>The changed text, where each change went, and every change that could not be made. Whether it is still a layout only reading it tells.</returns>
    /// <exception cref="ArgumentException">The text is not a JSON object, or an object in it has a name twice.</exception>
    /// <exception cref="JsonException">An object in a change's value has a name twice.</exception>
    /// <exception cref="InvalidOperationException">A text in a change's value holds half of a surrogate pair.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static EditedDocument Apply(ReadOnlyMemory<byte> utf8, ImmutableArray<DocumentChange> changes, CancellationToken cancellationToken = default)
    {
        if (utf8.Span.StartsWith("\uFEFF"u8)) utf8 = utf8[3..];
        var root = Parse(utf8);
        var context = new ReadingContext(utf8, new LayoutReaderOptions(), cancellationToken);
        var pointers = ImmutableArray.CreateBuilder<string?>(changes.Length);
        var faults = ImmutableArray.CreateBuilder<EditFault>();
        for (var at = 0; at < changes.Length; at++)
        {
            cancellationToken.ThrowIfCancellationRequested();
            pointers.Add(Make(context, root, changes[at], out var fault));
            if (fault is not null) faults.Add(new EditFault(at, fault));
        }
        return new EditedDocument(Write(root), pointers.MoveToImmutable(), faults.ToImmutable());
    }

    static JsonObject Parse(ReadOnlyMemory<byte> utf8)
    {
        try
        {
            return JsonNode.Parse(utf8.Span, null, Once) as JsonObject ?? throw new ArgumentException("The text is not a JSON object.", nameof(utf8));
        }
        catch (JsonException notJson)
        {
            throw new ArgumentException("The text is not a JSON object in which every name stands once.", nameof(utf8), notJson);
        }
    }

    static string? Make(ReadingContext context, JsonObject root, DocumentChange change, out string? fault)
    {
        var names = EditPath.Split(change.Path, out fault);
        if (fault is not null) return null;
        var place = EditPlace.Find(context, root, names, out fault);
        if (place is not { } found) return null;
        if (change.Value.ValueKind is JsonValueKind.Null or JsonValueKind.Undefined)
        {
            found.Remove(out fault);
            return null;
        }
        found.Set(JsonNode.Parse(change.Value.GetRawText(), null, Once));
        return found.Pointer;
    }

    static ReadOnlyMemory<byte> Write(JsonObject root)
    {
        var text = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(text, Written)) root.WriteTo(writer);
        return text.WrittenMemory;
    }
}

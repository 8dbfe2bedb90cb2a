using System.Text.Json;
using System.Text.Unicode;
using FlowCalc.Layouts.Reading;

namespace FlowCalc.Layouts;

/// <summary>Reads a layout document, with every fault at once.</summary>
public static class LayoutReader
{
    const int DeepestNesting = 1_000;

    /// <summary>Reads a layout document.</summary>
    /// <param name="utf8">The document: JSON in UTF-8, with or without a byte order mark.</param>
    /// <param name="options">Limits on what is read; null for the defaults.</param>
    /// <param name="cancellationToken">Ends the reading early.</param>
    /// <returns>The layout, or every fault in the document's order.</returns>
    /// <exception cref="JsonException">The text is not JSON in UTF-8, or nested deeper than the options allow.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An option is outside its range.</exception>
    /// <exception cref="OperationCanceledException">The reading was ended early.</exception>
    public static LayoutReading Read(ReadOnlyMemory<byte> utf8, LayoutReaderOptions? options = null, CancellationToken cancellationToken = default)
    {
        options ??= new LayoutReaderOptions();
        ArgumentOutOfRangeException.ThrowIfLessThan(options.MaximumPoints, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfLessThan(options.MaximumFaults, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfLessThan(options.MaximumDepth, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(options.MaximumDepth, DeepestNesting, nameof(options));
        cancellationToken.ThrowIfCancellationRequested();
        if (utf8.Span.StartsWith("\uFEFF"u8)) utf8 = utf8[3..];
        // The parser lets malformed bytes inside a string through and throws only when the string is asked for.
        if (!Utf8.IsValid(utf8.Span)) throw new JsonException("The text is not UTF-8.");

        using var document = JsonTree.Parse(utf8, options.MaximumDepth);
        var context = new ReadingContext(utf8, options, cancellationToken);
        var layout = DocumentReader.Read(context, document.Root);
        return context.Faults.IsEmpty
            ? new LayoutReading(layout ?? throw new InvalidOperationException("A document without faults gave no layout."), [])
            : new LayoutReading(null, context.Faults.ToFaults());
    }
}

using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Unicode;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads a JSON text into what it describes, with every fault at once.</summary>
static class TextReading
{
    const int DeepestNesting = 1_000;

    /// <summary>Reads a text.</summary>
    /// <param name="utf8">JSON in UTF-8, with or without a byte order mark.</param>
    /// <param name="options">Limits on what is read.</param>
    /// <param name="read">Reads the outermost value; null where it logged faults.</param>
    /// <param name="cancellationToken">Ends the reading early.</param>
    /// <returns>What was read, or every fault in the text's order.</returns>
    /// <exception cref="JsonException">The text is not JSON in UTF-8, or nested deeper than the options allow.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An option is outside its range.</exception>
    /// <exception cref="OperationCanceledException">The reading was ended early.</exception>
    public static (T? Value, ImmutableArray<LayoutFault> Faults) Read<T>(
        ReadOnlyMemory<byte> utf8, LayoutReaderOptions options, Func<ReadingContext, JsonValue, T?> read, CancellationToken cancellationToken)
        where T : class
    {
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
        var value = read(context, document.Root);
        return context.Faults.IsEmpty
            ? (value ?? throw new InvalidOperationException("A text without faults gave nothing."), [])
            : (null, context.Faults.ToFaults());
    }
}

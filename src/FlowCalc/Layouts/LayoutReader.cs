using System.Text.Json;
using FlowCalc.Layouts.Reading;

namespace FlowCalc.Layouts;

/// <summary>Reads a layout document, with every fault at once.</summary>
public static class LayoutReader
{
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
        var (layout, faults) = TextReading.Read(utf8, options ?? new LayoutReaderOptions(), DocumentReader.Read, cancellationToken);
        return new LayoutReading(layout, faults);
    }
}

using System.Text.Json;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;

namespace FlowCalc.Studies.Reading;

/// <summary>A layout document that stands within a request.</summary>
/// <param name="Layout">The layout; null where it has faults, which are logged.</param>
/// <param name="Utf8">Its own text.</param>
sealed record NestedLayout(Layout? Layout, ReadOnlyMemory<byte> Utf8)
{
    /// <summary>Reads a layout within a request, as if it came alone: its assumptions point from its own outermost value, its faults from the request's.</summary>
    /// <param name="context">The reading of the request.</param>
    /// <param name="element">Where it stands.</param>
    /// <param name="options">Limits on what is read of it.</param>
    public static NestedLayout Read(ReadingContext context, JsonValue element, LayoutReaderOptions options)
    {
        if (element.ValueKind is not JsonValueKind.Object)
        {
            context.Faults.Add(element, $"read {Said.Value(element)}: a layout document is an object");
            return new NestedLayout(null, default);
        }
        var utf8 = TextOf(context, element);
        var reading = LayoutReader.Read(utf8, options, context.Cancellation);
        context.Faults.Add(element, reading.Faults);
        return new NestedLayout(reading.Layout, utf8);
    }

    /// <summary>The text of a value within the text that is read.</summary>
    public static ReadOnlyMemory<byte> TextOf(ReadingContext context, JsonValue element)
    {
        var behind = context.Utf8[element.Start..];
        var reader = new Utf8JsonReader(behind.Span, new JsonReaderOptions { MaxDepth = context.Options.MaximumDepth });
        reader.Read();
        reader.Skip();
        return behind[..(int)reader.BytesConsumed];
    }
}

using System.Text.Json;
using System.Text.Unicode;
using FlowCalc.Api.Faults;
using FlowCalc.Studies;

namespace FlowCalc.Api.Requests;

/// <summary>What a text was read into, or every fault in it.</summary>
/// <typeparam name="TRequest">What it describes.</typeparam>
/// <param name="utf8">JSON in UTF-8.</param>
/// <param name="cancel">The time is up, or the caller has gone.</param>
internal delegate StudyReading<TRequest> BodyReader<TRequest>(ReadOnlyMemory<byte> utf8, CancellationToken cancel) where TRequest : class;

/// <summary>Turns the bytes of a body into what it describes, or into the fault that says why not.</summary>
internal static class JsonBody
{
    static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    /// <summary>What the body describes; null where there is a fault.</summary>
    /// <exception cref="OperationCanceledException">The time is up or the caller has gone.</exception>
    public static TRequest? Read<TRequest>(ReadOnlyMemory<byte> body, BodyReader<TRequest> read, out Problem? fault, CancellationToken cancel)
        where TRequest : class
    {
        fault = null;
        // Some editors write a byte order mark; RFC 8259 lets a reader pass over it.
        if (body.Span.StartsWith(ByteOrderMark))
            body = body[ByteOrderMark.Length..];
        if (body.Span.IndexOfAnyExcept(" \t\r\n"u8) < 0)
        {
            fault = Problems.EmptyBody();
            return null;
        }

        try
        {
            var (request, faults) = read(body, cancel);
            if (request is null)
                fault = Problems.Unread(faults);
            return request;
        }
        catch (JsonException notJson)
        {
            fault = Utf8.IsValid(body.Span) ? Problems.NotJson(Reason(notJson)) : Problems.NotUtf8(FirstBad(body.Span));
            return null;
        }
    }

    // The reader's own message ends in zero-based numbers; people count lines from one.
    static string Reason(JsonException thrown)
    {
        var message = thrown.Message;
        var place = message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        if (place >= 0)
            message = message[..place];
        return thrown is { LineNumber: { } line, BytePositionInLine: { } position }
            ? FormattableString.Invariant($"{message} (line {line + 1}, byte {position + 1})")
            : message;
    }

    static int FirstBad(ReadOnlySpan<byte> text)
    {
        var at = 0;
        while (System.Text.Rune.DecodeFromUtf8(text[at..], out _, out var length) == System.Buffers.OperationStatus.Done)
            at += length;
        return at;
    }
}

using System.Text.Json.Serialization.Metadata;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Requests;

namespace FlowCalc.Api.Answers;

/// <summary>Writes an answer into the response, numbers in full, with its length in the header.</summary>
internal static class AnswerWriter
{
    public const string Json = "application/json; charset=utf-8";

    /// <summary>Writes an answer by the generated serializer.</summary>
    public static Task WriteAsync<T>(HttpContext context, T answer, JsonTypeInfo<T> type, int status = StatusCodes.Status200OK, string contentType = Json)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = contentType;
        return WriteAsync(context, (answer, type), static (text, state) => text.Value(state.answer, state.type));
    }

    /// <summary>Writes an answer by a writer of its own.</summary>
    public static Task WriteAsync<T>(HttpContext context, T answer, Action<JsonText, T> write)
    {
        context.Response.ContentType ??= Json;
        return SendAsync(context, AnswerText.Of(answer, write));
    }

    /// <summary>Writes bytes that are an answer already.</summary>
    public static Task WriteBytesAsync(HttpContext context, ReadOnlyMemory<byte> bytes, string contentType) => SendAsync(context, Bytes(context, bytes, contentType));

    /// <summary>Makes the text of an answer of bytes, and sets its type.</summary>
    /// <param name="context">The request.</param>
    /// <param name="bytes">The answer.</param>
    /// <param name="contentType">What it is.</param>
    public static AnswerText Bytes(HttpContext context, ReadOnlyMemory<byte> bytes, string contentType)
    {
        context.Response.ContentType = contentType;
        return AnswerText.Of(bytes);
    }

    /// <summary>The same for calls whose work gives the bytes.</summary>
    /// <param name="context">The request.</param>
    /// <param name="contentType">What they are.</param>
    public static AnswerMaker<byte[]> Bytes(HttpContext context, string contentType) => (bytes, _) => new(Bytes(context, bytes, contentType));

    /// <summary>Sends an answer whose status and content type are set.</summary>
    /// <param name="context">The request.</param>
    /// <param name="answer">The answer, whose buffers go back.</param>
    public static async Task SendAsync(HttpContext context, AnswerText answer)
    {
        using (answer) await answer.SendAsync(context, context.RequestServices.GetRequiredService<HeldBytes>());
    }
}

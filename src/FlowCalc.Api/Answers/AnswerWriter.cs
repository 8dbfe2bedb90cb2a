using System.Text.Json.Serialization.Metadata;

namespace FlowCalc.Api.Answers;

/// <summary>Writes an answer into the response, numbers in full; with its length in the header unless it is long.</summary>
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
    public static async Task WriteAsync<T>(HttpContext context, T answer, Action<JsonText, T> write)
    {
        var response = context.Response;
        response.ContentType ??= Json;
        using var text = new JsonText(response.BodyWriter);
        write(text, answer);
        if (text.IsWhole)
            response.ContentLength = text.Bytes.Length;
        await response.BodyWriter.WriteAsync(text.Bytes, context.RequestAborted);
    }

    /// <summary>Writes bytes that are an answer already.</summary>
    public static async Task WriteBytesAsync(HttpContext context, ReadOnlyMemory<byte> bytes, string contentType)
    {
        context.Response.ContentType = contentType;
        context.Response.ContentLength = bytes.Length;
        await context.Response.BodyWriter.WriteAsync(bytes, context.RequestAborted);
    }
}

using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace FlowCalc.Api.Answers;

/// <summary>Writes an answer straight into the response, numbers in full.</summary>
internal static class AnswerWriter
{
    public const string Json = "application/json; charset=utf-8";

    // A degree sign or a micro sign stays readable: the answer is never part of a page, and nosniff says so.
    static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, SkipValidation = true };

    [ThreadStatic]
    static Utf8JsonWriter? spare;

    /// <summary>Writes an answer by the generated serializer.</summary>
    public static Task WriteAsync<T>(HttpContext context, T answer, JsonTypeInfo<T> type, int status = StatusCodes.Status200OK, string contentType = Json)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = contentType;
        return WriteAsync(context, (answer, type), static (writer, state) => JsonSerializer.Serialize(writer, state.answer, state.type));
    }

    /// <summary>Writes an answer by a writer of its own.</summary>
    public static Task WriteAsync<T>(HttpContext context, T answer, Action<Utf8JsonWriter, T> write)
    {
        context.Response.ContentType ??= Json;
        var writer = spare ?? new Utf8JsonWriter(Stream.Null, Options);
        spare = null;
        writer.Reset(context.Response.BodyWriter);
        write(writer, answer);
        writer.Flush();
        writer.Reset(Stream.Null);
        spare = writer;
        return context.Response.BodyWriter.FlushAsync(context.RequestAborted).AsTask();
    }

    /// <summary>Writes bytes that are an answer already.</summary>
    public static async Task WriteBytesAsync(HttpContext context, ReadOnlyMemory<byte> bytes, string contentType)
    {
        context.Response.ContentType = contentType;
        context.Response.ContentLength = bytes.Length;
        await context.Response.BodyWriter.WriteAsync(bytes, context.RequestAborted);
    }
}

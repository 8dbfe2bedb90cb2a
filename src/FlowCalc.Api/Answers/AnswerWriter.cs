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

    public static async Task WriteAsync<T>(HttpContext context, T answer, JsonTypeInfo<T> type, int status = StatusCodes.Status200OK, string contentType = Json)
    {
        var response = context.Response;
        response.StatusCode = status;
        response.ContentType = contentType;
        Serialize(response, answer, type);
        await response.BodyWriter.FlushAsync(context.RequestAborted);
    }

    /// <summary>Writes bytes that are an answer already.</summary>
    public static async Task WriteBytesAsync(HttpContext context, ReadOnlyMemory<byte> bytes, string contentType)
    {
        context.Response.ContentType = contentType;
        context.Response.ContentLength = bytes.Length;
        await context.Response.BodyWriter.WriteAsync(bytes, context.RequestAborted);
    }

    static void Serialize<T>(HttpResponse response, T answer, JsonTypeInfo<T> type)
    {
        var writer = spare ?? new Utf8JsonWriter(response.BodyWriter, Options);
        spare = null;
        writer.Reset(response.BodyWriter);
        JsonSerializer.Serialize(writer, answer, type);
        writer.Flush();
        writer.Reset(Stream.Null);
        spare = writer;
    }
}

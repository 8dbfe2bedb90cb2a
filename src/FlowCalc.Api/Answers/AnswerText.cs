using FlowCalc.Api.Hosting;

namespace FlowCalc.Api.Answers;

/// <summary>An answer as the bytes that go out, whole before the first of them is sent.</summary>
internal sealed class AnswerText : IDisposable
{
    // So much is handed to the server at once: it copies all that it is given before it waits for a slow reader.
    const int Slice = 64 * 1024;

    // The least rate at which an answer is read, bytes a second, and what a reader has beside that for every slice.
    const double LeastRate = 10 * 1024, Patience = 5;

    readonly JsonText? text;
    readonly TextPieces? pieces;
    readonly ReadOnlyMemory<byte> bytes;

    AnswerText(JsonText text, TextPieces pieces) => (this.text, this.pieces) = (text, pieces);

    AnswerText(ReadOnlyMemory<byte> bytes) => this.bytes = bytes;

    /// <summary>An answer in JSON.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="write">Writes it.</param>
    /// <exception cref="NotFiniteException">A number of it is not finite.</exception>
    public static AnswerText Of<T>(T answer, Action<JsonText, T> write)
    {
        var pieces = new TextPieces();
        var text = new JsonText(pieces);
        var made = new AnswerText(text, pieces);
        try
        {
            write(text, answer);
            return made;
        }
        catch
        {
            // The buffers go back whatever the writer did.
            made.Dispose();
            throw;
        }
    }

    /// <summary>An answer that is bytes already.</summary>
    /// <param name="bytes">All of it.</param>
    public static AnswerText Of(ReadOnlyMemory<byte> bytes) => new(bytes);

    /// <summary>How long it is, bytes.</summary>
    public long Length => text is null ? bytes.Length : pieces!.Length + text.Bytes.Length;

    /// <summary>Sends it, and counts it as held until it has gone.</summary>
    /// <param name="context">The request, with status, content type and other headers set.</param>
    /// <param name="held">Where it counts.</param>
    public async Task SendAsync(HttpContext context, HeldBytes held)
    {
        var left = Length;
        context.Response.ContentLength = left;
        held.Add(left);
        try
        {
            while (pieces is not null && pieces.TryTakeFirst(out var piece))
            {
                try
                {
                    await WriteAsync(context, piece);
                }
                finally
                {
                    TextPieces.Return(piece);
                }
                held.Return(piece.Length);
                left -= piece.Length;
            }
            for (var rest = text?.Bytes ?? bytes; ;)
            {
                var slice = rest.Length > Slice ? rest[..Slice] : rest;
                await WriteAsync(context, slice);
                held.Return(slice.Length);
                left -= slice.Length;
                rest = rest[slice.Length..];
                if (rest.IsEmpty) return;
            }
        }
        finally
        {
            held.Return(left);
        }
    }

    // The server's own least rate counts what lies in the system's buffers as read, so that it lets a reader who stops wait for minutes.
    static async ValueTask WriteAsync(HttpContext context, ReadOnlyMemory<byte> slice)
    {
        var writing = context.Response.BodyWriter.WriteAsync(slice, context.RequestAborted);
        if (writing.IsCompleted)
        {
            await writing;
            return;
        }
        await using var late = new Timer(static state => ((HttpContext)state!).Abort(), context, TimeSpan.FromSeconds(Patience + slice.Length / LeastRate), Timeout.InfiniteTimeSpan);
        await writing;
    }

    /// <summary>Gives the buffers back.</summary>
    public void Dispose()
    {
        text?.Dispose();
        pieces?.Dispose();
    }
}

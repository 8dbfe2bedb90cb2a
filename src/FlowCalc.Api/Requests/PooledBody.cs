using System.Buffers;

namespace FlowCalc.Api.Requests;

/// <summary>A request's body in a rented buffer, which goes back on disposal.</summary>
internal sealed class PooledBody : IDisposable
{
    const int FirstSize = 16 * 1024;
    byte[] buffer;
    int length;

    PooledBody(int size) => buffer = ArrayPool<byte>.Shared.Rent(size);

    /// <summary>What has been read.</summary>
    public ReadOnlyMemory<byte> Bytes => buffer.AsMemory(0, length);

    /// <summary>Reads the whole body.</summary>
    /// <param name="request">The request.</param>
    /// <param name="most">Most bytes.</param>
    /// <param name="longest">Longest time for it to arrive.</param>
    /// <param name="cancel">The caller has gone.</param>
    /// <returns>The body; none where it is longer than that, or late.</returns>
    public static async ValueTask<(PooledBody? Body, bool IsLate)> ReadAsync(HttpRequest request, int most, TimeSpan longest, CancellationToken cancel)
    {
        if (request.ContentLength > most) return default;
        // A stated length is only a promise, so it buys no more than the first buffer.
        var body = new PooledBody((int)Math.Min(request.ContentLength + 1 ?? FirstSize, FirstSize));
        var reader = request.BodyReader;
        Timer? late = null;
        try
        {
            while (true)
            {
                var reading = reader.ReadAsync(cancel);
                // Most bodies are there already. A read that is cancelled by its token would leave the server in the midst of it.
                if (!reading.IsCompleted) late ??= new Timer(static state => ((System.IO.Pipelines.PipeReader)state!).CancelPendingRead(), reader, longest, Timeout.InfiniteTimeSpan);
                var read = await reading;
                var isLonger = read.Buffer.Length > most - body.length;
                if (!isLonger) body.Add(read.Buffer);
                reader.AdvanceTo(read.Buffer.End);
                if (read.IsCompleted && !isLonger) return (body, false);
                if (!isLonger && !read.IsCanceled) continue;
                body.Dispose();
                return (null, !isLonger);
            }
        }
        catch
        {
            // The buffer goes back whatever the caller did to the connection.
            body.Dispose();
            throw;
        }
        finally
        {
            late?.Dispose();
        }
    }

    public void Dispose()
    {
        if (buffer.Length > 0)
            ArrayPool<byte>.Shared.Return(buffer);
        buffer = [];
        length = 0;
    }

    void Add(in ReadOnlySequence<byte> more)
    {
        var whole = length + (int)more.Length;
        if (whole > buffer.Length)
        {
            var larger = ArrayPool<byte>.Shared.Rent(Math.Max(whole, checked(2 * buffer.Length)));
            buffer.AsSpan(0, length).CopyTo(larger);
            ArrayPool<byte>.Shared.Return(buffer);
            buffer = larger;
        }
        more.CopyTo(buffer.AsSpan(length));
        length = whole;
    }
}

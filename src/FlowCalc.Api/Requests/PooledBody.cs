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

    /// <summary>Reads the whole body; null where it is longer than <paramref name="most"/> bytes.</summary>
    public static async ValueTask<PooledBody?> ReadAsync(HttpRequest request, int most, CancellationToken cancel)
    {
        if (request.ContentLength > most)
            return null;
        // A stated length is only a promise, so it buys no more than the first buffer.
        var body = new PooledBody((int)Math.Min(request.ContentLength + 1 ?? FirstSize, FirstSize));
        try
        {
            while (true)
            {
                if (body.length == body.buffer.Length)
                    body.Grow();
                var read = await request.Body.ReadAsync(body.buffer.AsMemory(body.length), cancel);
                if (read == 0)
                    return body;
                body.length += read;
                if (body.length > most)
                {
                    body.Dispose();
                    return null;
                }
            }
        }
        catch
        {
            // The buffer goes back whatever the caller did to the connection.
            body.Dispose();
            throw;
        }
    }

    public void Dispose()
    {
        if (buffer.Length > 0)
            ArrayPool<byte>.Shared.Return(buffer);
        buffer = [];
        length = 0;
    }

    void Grow()
    {
        var larger = ArrayPool<byte>.Shared.Rent(checked(2 * buffer.Length));
        buffer.AsSpan(0, length).CopyTo(larger);
        ArrayPool<byte>.Shared.Return(buffer);
        buffer = larger;
    }
}

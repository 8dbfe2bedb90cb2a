using System.Buffers;
using System.IO.Pipelines;
using FlowCalc.Api.Hosting;

namespace FlowCalc.Api.Requests;

/// <summary>A request's body in a rented buffer, which counts as held and goes back on disposal.</summary>
internal sealed class PooledBody : IDisposable
{
    const int FirstSize = 16 * 1024;

    readonly HeldBytes held;
    readonly int most;
    byte[] buffer;
    int length, taken;

    PooledBody(int size, int most, HeldBytes held) => (buffer, taken, this.most, this.held) = (ArrayPool<byte>.Shared.Rent(size), size, most, held);

    /// <summary>What has been read.</summary>
    public ReadOnlyMemory<byte> Bytes => buffer.AsMemory(0, length);

    /// <summary>Reads the whole body.</summary>
    /// <param name="request">The request.</param>
    /// <param name="limits">How large it may be, and how long it may take to arrive.</param>
    /// <param name="held">What all bodies and answers hold.</param>
    /// <param name="cancel">The caller has gone.</param>
    /// <returns>How it arrived; the body where it did so whole.</returns>
    public static async ValueTask<(BodyArrival Arrival, PooledBody? Body)> ReadAsync(HttpRequest request, ServiceLimits limits, HeldBytes held, CancellationToken cancel)
    {
        if (request.ContentLength > limits.BodyBytes) return (BodyArrival.TooLarge, null);
        // A stated length is only a promise, so it buys no more than the first buffer.
        var size = (int)Math.Clamp(request.ContentLength ?? FirstSize, 1, Math.Min(FirstSize, limits.BodyBytes));
        if (!held.TryTake(size)) return (BodyArrival.NoRoom, null);
        var body = new PooledBody(size, limits.BodyBytes, held);
        var arrival = BodyArrival.NoRoom;
        try
        {
            arrival = await body.FillAsync(request.BodyReader, limits.BodyTime, cancel);
            return arrival == BodyArrival.Whole ? (arrival, body) : (arrival, null);
        }
        finally
        {
            // The buffer goes back whatever the caller did to the connection.
            if (arrival != BodyArrival.Whole) body.Dispose();
        }
    }

    public void Dispose()
    {
        if (buffer.Length == 0) return;
        ArrayPool<byte>.Shared.Return(buffer);
        held.Return(taken);
        (buffer, length, taken) = ([], 0, 0);
    }

    async ValueTask<BodyArrival> FillAsync(PipeReader reader, TimeSpan longest, CancellationToken cancel)
    {
        Timer? late = null;
        try
        {
            while (true)
            {
                var reading = reader.ReadAsync(cancel);
                // Most bodies are there already. A read that is cancelled by its token would leave the server in the midst of it.
                if (!reading.IsCompleted) late ??= new Timer(static state => ((PipeReader)state!).CancelPendingRead(), reader, longest, Timeout.InfiniteTimeSpan);
                var read = await reading;
                var arrival = Add(read.Buffer);
                reader.AdvanceTo(read.Buffer.End);
                if (arrival is { } refused) return refused;
                if (read.IsCompleted) return BodyArrival.Whole;
                if (read.IsCanceled) return BodyArrival.Late;
            }
        }
        finally
        {
            late?.Dispose();
        }
    }

    // Null where it found room.
    BodyArrival? Add(in ReadOnlySequence<byte> more)
    {
        if (more.Length > most - length) return BodyArrival.TooLarge;
        var whole = length + (int)more.Length;
        if (whole > taken && !TryGrow((int)Math.Min(most, Math.Max(whole, 2L * taken)))) return BodyArrival.NoRoom;
        more.CopyTo(buffer.AsSpan(length));
        length = whole;
        return null;
    }

    bool TryGrow(int size)
    {
        if (!held.TryTake(size - taken)) return false;
        taken = size;
        if (size <= buffer.Length) return true;
        var larger = ArrayPool<byte>.Shared.Rent(size);
        buffer.AsSpan(0, length).CopyTo(larger);
        ArrayPool<byte>.Shared.Return(buffer);
        buffer = larger;
        return true;
    }
}

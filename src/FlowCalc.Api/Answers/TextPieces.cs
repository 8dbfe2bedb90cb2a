using System.Buffers;
using System.Runtime.InteropServices;

namespace FlowCalc.Api.Answers;

/// <summary>A long text in rented pieces, each of which goes back as soon as it was sent.</summary>
internal sealed class TextPieces : IBufferWriter<byte>, IDisposable
{
    // Below the size from which arrays are moved no more.
    const int Size = 64 * 1024;

    readonly Queue<ReadOnlyMemory<byte>> whole = [];
    byte[] last = [];
    int length;

    /// <summary>How long it is, bytes.</summary>
    public long Length { get; private set; }

    /// <summary>Takes the first piece out.</summary>
    /// <param name="piece">The piece, to be returned by <see cref="Return"/>.</param>
    /// <returns>False where there is none left.</returns>
    public bool TryTakeFirst(out ReadOnlyMemory<byte> piece)
    {
        if (whole.Count == 0) Close();
        return whole.TryDequeue(out piece);
    }

    /// <summary>Gives the buffer of a piece back.</summary>
    public static void Return(ReadOnlyMemory<byte> piece)
    {
        if (MemoryMarshal.TryGetArray(piece, out var part)) ArrayPool<byte>.Shared.Return(part.Array!);
    }

    public void Advance(int count)
    {
        length += count;
        Length += count;
    }

    public Memory<byte> GetMemory(int sizeHint = 0)
    {
        if (last.Length - length < Math.Max(sizeHint, 1))
        {
            Close();
            last = ArrayPool<byte>.Shared.Rent(Math.Max(sizeHint, Size));
        }
        return last.AsMemory(length);
    }

    public Span<byte> GetSpan(int sizeHint = 0) => GetMemory(sizeHint).Span;

    public void Dispose()
    {
        Close();
        while (whole.TryDequeue(out var piece)) Return(piece);
    }

    void Close()
    {
        if (length > 0) whole.Enqueue(last.AsMemory(0, length));
        else if (last.Length > 0) ArrayPool<byte>.Shared.Return(last);
        (last, length) = ([], 0);
    }
}

namespace FlowCalc.Api.Hosting;

/// <summary>Bytes of bodies that arrive or wait and of answers that are sent, of all callers together: whoever sends or reads slowly takes no more memory than <see cref="ServiceLimits.HeldBytes"/>.</summary>
/// <remarks>Counted is what bodies and answers have; the rented buffers behind them may be up to twice as large.</remarks>
internal sealed class HeldBytes(ServiceLimits limits)
{
    long held;

    /// <summary>What is held now.</summary>
    public long Count => Interlocked.Read(ref held);

    /// <summary>True where nothing more is taken in until something has gone out.</summary>
    public bool IsFull => Count >= limits.HeldBytes;

    /// <summary>Takes room for a body, where there is so much.</summary>
    /// <param name="bytes">How much more, 0 or more.</param>
    /// <returns>False where there is not; nothing is taken then.</returns>
    public bool TryTake(long bytes)
    {
        for (var known = Count; known + bytes <= limits.HeldBytes;)
        {
            var now = Interlocked.CompareExchange(ref held, known + bytes, known);
            if (now == known) return true;
            known = now;
        }
        return false;
    }

    /// <summary>Counts an answer, room or not: work that is done is not thrown away. As long as there is no room, no body is taken in.</summary>
    /// <param name="bytes">Its length.</param>
    public void Add(long bytes) => Interlocked.Add(ref held, bytes);

    /// <summary>Gives back what was taken or added.</summary>
    /// <param name="bytes">How much of it.</param>
    public void Return(long bytes) => Interlocked.Add(ref held, -bytes);
}

using System.Numerics;
using System.Runtime.Intrinsics;

namespace FlowCalc.Studies.Sampling;

/// <summary>One of the orders of the numbers 0 to n − 1, chosen by a key; any place of it is known without the others.</summary>
/// <remarks>
/// A balanced Feistel network of six rounds over the least even number of bits that holds n, walked until it comes back below n (J. Black, P. Rogaway, Ciphers with arbitrary finite domains,
/// CT-RSA 2002, from memory); its round function is the finaliser of MurmurHash3 (A. Appleby, public domain, from memory). Good for sampling, not for secrets.
/// </remarks>
internal readonly struct KeyedPermutation
{
    const int Rounds = 6;
    readonly uint count;
    readonly int half;
    readonly ulong[] keys;

    /// <summary>Chooses an order.</summary>
    /// <param name="count">How many numbers, 1 to 2³⁰.</param>
    /// <param name="key">The key.</param>
    /// <param name="stream">Tells orders of one key apart.</param>
    public KeyedPermutation(int count, ulong key, uint stream)
    {
        this.count = (uint)count;
        half = (BitOperations.Log2((uint)Math.Max(count - 1, 1)) + 2) / 2;
        keys = new ulong[Rounds];
        for (var round = 0; round < Rounds; round++)
        {
            var block = Philox.Block(Vector128.Create((uint)round, stream, 0u, 1u), key);
            keys[round] = block[0] | (ulong)block[1] << 32;
        }
    }

    /// <summary>The number at a place, 0 to n − 1.</summary>
    /// <param name="place">The place, 0 to n − 1.</param>
    public int this[int place]
    {
        get
        {
            var at = (uint)place;
            do at = Pass(at);
            while (at >= count);
            return (int)at;
        }
    }

    uint Pass(uint at)
    {
        var mask = (1u << half) - 1;
        var (left, right) = (at >> half, at & mask);
        foreach (var key in keys) (left, right) = (right, left ^ (uint)Mixed(right ^ key) & mask);
        return left << half | right;
    }

    static ulong Mixed(ulong value)
    {
        value = (value ^ value >> 33) * 0xFF51AFD7ED558CCD;
        value = (value ^ value >> 33) * 0xC4CEB9FE1A85EC53;
        return value ^ value >> 33;
    }
}

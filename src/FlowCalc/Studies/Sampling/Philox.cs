using System.Runtime.Intrinsics;

namespace FlowCalc.Studies.Sampling;

/// <summary>Philox 4×32 with ten rounds: a counter-based generator, so that a number is a pure function of a key and a place and no thread waits for another.</summary>
/// <remarks>Source: J. K. Salmon, M. A. Moraes, R. O. Dror, D. E. Shaw, Parallel random numbers: as easy as 1, 2, 3, SC11 (2011); constants from memory, held against the known answers of the authors' library.</remarks>
internal static class Philox
{
    const int Rounds = 10;
    const ulong FirstFactor = 0xD2511F53, SecondFactor = 0xCD9E8D57;
    const uint FirstWeyl = 0x9E3779B9, SecondWeyl = 0xBB67AE85;

    /// <summary>Four numbers of 32 bits.</summary>
    /// <param name="counter">The place, four numbers of 32 bits.</param>
    /// <param name="key">The key, of which the lower half comes first.</param>
    public static Vector128<uint> Block(Vector128<uint> counter, ulong key)
    {
        var (a, b, c, d) = (counter[0], counter[1], counter[2], counter[3]);
        var (first, second) = ((uint)key, (uint)(key >> 32));
        for (var round = 0; round < Rounds; round++)
        {
            ulong left = FirstFactor * a, right = SecondFactor * c;
            (a, b, c, d) = ((uint)(right >> 32) ^ b ^ first, (uint)right, (uint)(left >> 32) ^ d ^ second, (uint)left);
            unchecked
            {
                first += FirstWeyl;
                second += SecondWeyl;
            }
        }
        return Vector128.Create(a, b, c, d);
    }
}

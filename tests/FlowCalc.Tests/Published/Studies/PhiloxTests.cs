using System.Runtime.Intrinsics;
using FlowCalc.Studies.Sampling;

namespace FlowCalc.Tests.Published.Studies;

/// <summary>J. K. Salmon and others, Random123 library, kat_vectors, lines of philox4x32 with 10 rounds (from memory): integers, so that every digit counts.</summary>
public class PhiloxTests
{
    [Theory]
    [InlineData(0u, 0u, 0u, 0u, 0ul, 0x6627e8d5u, 0xe169c58du, 0xbc57ac4cu, 0x9b00dbd8u)]
    [InlineData(0xffffffffu, 0xffffffffu, 0xffffffffu, 0xffffffffu, 0xffffffff_fffffffful, 0x408f276du, 0x41c83b0eu, 0xa20bc7c6u, 0x6d5451fdu)]
    [InlineData(0x243f6a88u, 0x85a308d3u, 0x13198a2eu, 0x03707344u, 0x299f31d0_a4093822ul, 0xd16cfe09u, 0x94fdccebu, 0x5001e420u, 0x24126ea1u)]
    public void Numbers_are_the_known_answers_of_its_authors(uint a, uint b, uint c, uint d, ulong key, uint first, uint second, uint third, uint fourth) =>
        Assert.Equal(Vector128.Create(first, second, third, fourth), Philox.Block(Vector128.Create(a, b, c, d), key));
}

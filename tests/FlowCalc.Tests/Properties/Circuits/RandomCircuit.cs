using System.Collections.Immutable;
using CsCheck;
using FlowCalc.Circuits;

namespace FlowCalc.Tests.Properties.Circuits;

/// <summary>Random resistive networks that hang together, sources in some of their branches.</summary>
static class RandomCircuit
{
    static readonly Gen<double> Ohms = Gen.Double[-5, 5].Select(power => Math.Pow(10, power));

    public static readonly Gen<(int Nodes, ImmutableArray<Branch> Branches)> Any =
        from nodes in Gen.Int[2, 12]
        from tree in Gen.Select(Gen.Int[0, 1000], Ohms, Gen.Double[-20, 20], Gen.Int[0, 3]).Array[nodes - 1]
        from more in Gen.Select(Gen.Int[0, nodes - 1], Gen.Int[0, nodes - 1], Ohms, Gen.Double[-20, 20], Gen.Int[0, 3]).Array[0, 14]
        select (nodes, (ImmutableArray<Branch>)
        [
            .. tree.Select((one, at) => new Branch(one.Item1 % (at + 1), at + 1, one.Item2, one.Item4 == 0 ? one.Item3 : 0)),
            .. more.Select(one => new Branch(one.Item1, one.Item2, one.Item3, one.Item5 == 0 ? one.Item4 : 0)),
        ]);
}

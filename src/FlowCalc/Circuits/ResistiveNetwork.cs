using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;

namespace FlowCalc.Circuits;

/// <summary>Solves networks of resistances and sources by modified nodal analysis.</summary>
/// <remarks>
/// Source: C.-W. Ho, A. E. Ruehli, P. A. Brennan, The modified nodal approach to network analysis, IEEE Trans. Circuits Syst. 22 (1975) 504–509 (from memory). Branches without a source
/// and of 5 mΩ or more are stamped as conductances; the current of every other is an unknown of its own, so that no small difference of potentials is divided by a small resistance.
/// </remarks>
public static class ResistiveNetwork
{
    const double LeastConductive = 0.005;

    /// <summary>Solves a network.</summary>
    /// <param name="nodes">How many nodes there are, 1 or more.</param>
    /// <param name="branches">The branches.</param>
    /// <returns>Potentials and currents; null where these do not follow, as in a loop of branches that have no resistance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A branch ends at no node, or its resistance or voltage is not finite or its resistance under 0.</exception>
    public static NetworkCurrents? Solve(int nodes, ImmutableArray<Branch> branches)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(nodes, 1);
        foreach (var branch in branches) Check(branch, nodes);
        var reference = References(nodes, branches);
        // A branch whose ends are one node and which has no resistance has no current that follows.
        var unknown = new int[branches.Length];
        var size = nodes;
        for (var at = 0; at < branches.Length; at++) unknown[at] = IsConductance(branches[at]) ? -1 : size++;

        var columns = new double[size * size];
        var right = new double[size];
        for (var at = 0; at < branches.Length; at++)
        {
            if (unknown[at] < 0) StampConductance(columns, size, branches[at]);
            else StampCurrent(columns, size, right, branches[at], unknown[at]);
        }
        for (var node = 0; node < nodes; node++)
            if (reference[node] == node)
            {
                for (var column = 0; column < size; column++) columns[column * size + node] = column == node ? 1 : 0;
                right[node] = 0;
            }
        var solution = Matrix<double>.Build.Dense(size, size, columns).Solve(Vector<double>.Build.Dense(right)).AsArray();
        if (!Array.TrueForAll(solution, double.IsFinite)) return null;
        return new([.. solution.Take(nodes)], [.. branches.Select((branch, at) => unknown[at] < 0 ? (solution[branch.From] - solution[branch.To]) / branch.Resistance : solution[unknown[at]])]);
    }

    static bool IsConductance(in Branch branch) => branch.Voltage == 0 && branch.Resistance >= LeastConductive;

    static void StampConductance(double[] columns, int size, in Branch branch)
    {
        var conductance = 1 / branch.Resistance;
        columns[branch.From * size + branch.From] += conductance;
        columns[branch.To * size + branch.To] += conductance;
        columns[branch.To * size + branch.From] -= conductance;
        columns[branch.From * size + branch.To] -= conductance;
    }

    // v(from) − v(to) + E = R·i, and i leaves one node for the other.
    static void StampCurrent(double[] columns, int size, double[] right, in Branch branch, int row)
    {
        columns[row * size + branch.From] += 1;
        columns[row * size + branch.To] -= 1;
        columns[branch.From * size + row] += 1;
        columns[branch.To * size + row] -= 1;
        columns[row * size + row] -= branch.Resistance;
        right[row] -= branch.Voltage;
    }

    // For every node the least node that it hangs together with: its balance follows from those of the others, so that its potential is free.
    static int[] References(int nodes, ImmutableArray<Branch> branches)
    {
        var reference = new int[nodes];
        for (var node = 0; node < nodes; node++) reference[node] = node;
        foreach (var branch in branches)
        {
            var (one, other) = (Find(reference, branch.From), Find(reference, branch.To));
            reference[Math.Max(one, other)] = Math.Min(one, other);
        }
        for (var node = 0; node < nodes; node++) reference[node] = Find(reference, node);
        return reference;
    }

    static int Find(int[] reference, int node)
    {
        while (reference[node] != node) node = reference[node];
        return node;
    }

    static void Check(in Branch branch, int nodes)
    {
        if ((uint)branch.From >= (uint)nodes || (uint)branch.To >= (uint)nodes) throw new ArgumentOutOfRangeException(nameof(branch), branch, "Its ends are nodes.");
        if (!(branch.Resistance >= 0 && double.IsFinite(branch.Resistance) && double.IsFinite(branch.Voltage))) throw new ArgumentOutOfRangeException(nameof(branch), branch, "A finite resistance of 0 or more and a finite voltage.");
    }
}

using System.Collections.Immutable;
using CsCheck;
using FlowCalc.Circuits;

namespace FlowCalc.Tests.Properties.Circuits;

/// <summary>What holds of every resistive network.</summary>
public class NetworkLawTests
{
    const int Networks = 2_000;

    // Ten decades between resistances cost digits of a potential, and 20 V over 5 mΩ end in the last of them at 1e-12 A.
    const double Relative = 1e-9, Least = 1e-10;

    static NetworkCurrents Solve((int Nodes, ImmutableArray<Branch> Branches) network) => ResistiveNetwork.Solve(network.Nodes, network.Branches)!;

    static double Largest(NetworkCurrents solved) => Math.Max(solved.Currents.Select(Math.Abs).Max(), Least / Relative);

    [Fact]
    public void Currents_balance_at_every_node() =>
        RandomCircuit.Any.Sample(network =>
        {
            var solved = Solve(network);
            var balance = new double[network.Nodes];
            for (var at = 0; at < network.Branches.Length; at++)
            {
                balance[network.Branches[at].From] += solved.Currents[at];
                balance[network.Branches[at].To] -= solved.Currents[at];
            }
            return balance.All(rest => Math.Abs(rest) <= Relative * Largest(solved));
        }, iter: Networks);

    [Fact]
    public void Every_branch_keeps_its_own_law_so_that_voltages_sum_to_nothing_round_every_loop() =>
        RandomCircuit.Any.Sample(network =>
        {
            var solved = Solve(network);
            return network.Branches.Select((branch, at) => Math.Abs(solved.Potentials[branch.From] - solved.Potentials[branch.To] + branch.Voltage - branch.Resistance * solved.Currents[at])).All(rest => rest <= 1e-7);
        }, iter: Networks);

    // Tellegen: the sources give what the resistances take.
    [Fact]
    public void What_sources_give_is_what_resistances_take() =>
        RandomCircuit.Any.Sample(network =>
        {
            var solved = Solve(network);
            var given = network.Branches.Select((branch, at) => branch.Voltage * solved.Currents[at]).Sum();
            var taken = network.Branches.Select((branch, at) => branch.Resistance * solved.Currents[at] * solved.Currents[at]).Sum();
            return Math.Abs(given - taken) <= Relative * Math.Max(taken, 1);
        }, iter: Networks);

    [Fact]
    public void Currents_grow_in_proportion_with_all_sources() =>
        Gen.Select(RandomCircuit.Any, Gen.Double[0.1, 10]).Sample((network, factor) =>
        {
            var (one, scaled) = (Solve(network), Solve((network.Nodes, [.. network.Branches.Select(branch => branch with { Voltage = branch.Voltage * factor })])));
            return one.Currents.Zip(scaled.Currents).All(pair => Math.Abs(pair.First * factor - pair.Second) <= Relative * Math.Max(1, factor) * Largest(one));
        }, iter: Networks);

    [Fact]
    public void The_order_of_the_branches_changes_nothing() =>
        Gen.Select(RandomCircuit.Any, Gen.Int[0, 10_000]).Sample((network, turn) =>
        {
            var count = network.Branches.Length;
            var order = Enumerable.Range(0, count).OrderBy(at => (at * 7919L + turn * 104729L) % 10007).ToArray();
            var (one, other) = (Solve(network), Solve((network.Nodes, [.. order.Select(at => network.Branches[at])])));
            return order.Select((at, place) => Math.Abs(one.Currents[at] - other.Currents[place])).All(rest => rest <= Relative * Largest(one));
        }, iter: Networks);

    [Fact]
    public void A_branch_turned_round_turns_its_current() =>
        RandomCircuit.Any.Sample(network =>
        {
            var (one, other) = (Solve(network), Solve((network.Nodes, [.. network.Branches.Select(branch => new Branch(branch.To, branch.From, branch.Resistance, -branch.Voltage))])));
            return one.Currents.Zip(other.Currents).All(pair => Math.Abs(pair.First + pair.Second) <= Relative * Largest(one));
        }, iter: Networks);

    [Fact]
    public void Parts_that_do_not_hang_together_are_solved_each_for_itself()
    {
        var solved = ResistiveNetwork.Solve(4, [new(0, 1, 0.5, 3), new(1, 0, 1), new(2, 3, 0, 5), new(3, 2, 10)])!;

        Assert.Equal([2, 2, 0.5, 0.5], solved.Currents.Select(current => Math.Round(current, 12)));
    }

    [Fact]
    public void A_loop_without_resistance_has_no_answer() => Assert.Null(ResistiveNetwork.Solve(2, [new(0, 1, 0, 3), new(0, 1, 0, 2)]));

    [Fact]
    public void A_branch_that_is_none_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ResistiveNetwork.Solve(2, [new(0, 2, 1)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => ResistiveNetwork.Solve(2, [new(0, 1, -1)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => ResistiveNetwork.Solve(2, [new(0, 1, double.NaN)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => ResistiveNetwork.Solve(0, []));
    }
}

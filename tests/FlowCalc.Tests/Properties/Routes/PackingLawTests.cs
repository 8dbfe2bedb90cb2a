using CsCheck;
using FlowCalc.Routes;

namespace FlowCalc.Tests.Properties.Routes;

public class PackingLawTests
{
    static readonly Gen<PackingProblem> Any = Problems(Gen.Long[1, 60], 40);

    static readonly Gen<PackingProblem> Small = Problems(Gen.Long[1, 30], 8);

    static Gen<PackingProblem> Problems(Gen<long> size, int most) =>
        Gen.Select(size.Array[0, most], Gen.Long[30, 90].Array[1, 3], Gen.Long[0, 4], (sizes, lengths, kerf) =>
        {
            long[] capacities = [.. lengths.Distinct().Order().Select(length => length + kerf)];
            return new PackingProblem([.. sizes.Select(one => Math.Min(one + kerf, capacities[^1])).OrderDescending()], capacities, kerf);
        });

    static (Packing Packing, long Least) Best(PackingProblem problem) => PackingSearch.Best(problem, new SearchEffort(), CancellationToken.None);

    [Fact]
    public void Every_size_is_packed_once_and_no_bin_holds_more_than_its_capacity() => Any.Sample(problem =>
    {
        var (packing, _) = Best(problem);

        return packing.Bins.SelectMany(bin => bin).Order().SequenceEqual(Enumerable.Range(0, problem.Sizes.Length))
            && packing.Bins.All(bin => problem.Content(bin) <= problem.Largest)
            && packing.Cost == packing.Bins.Sum(bin => problem.Cost(problem.Content(bin)));
    }, iter: 1_000);

    [Fact]
    public void No_packing_costs_less_than_its_bound_or_more_than_first_fit_decreasing() => Any.Sample(problem =>
    {
        var (packing, least) = Best(problem);

        return problem.Sizes.Length == 0 || (least <= packing.Cost && packing.Cost <= FirstFit.Pack(problem, problem.Largest).Cost);
    }, iter: 1_000);

    [Fact]
    public void Small_packings_are_the_best_that_trying_all_of_them_finds() => Small.Sample(problem =>
    {
        var (packing, least) = Best(problem);

        return packing.Cost == Cheapest(problem) && least == packing.Cost;
    }, iter: 1_000);

    [Fact]
    public void Packing_is_the_same_every_time() => Any.Sample(problem =>
        Best(problem).Packing.Bins.SelectMany(bin => bin.Append(-1)).SequenceEqual(Best(problem).Packing.Bins.SelectMany(bin => bin.Append(-1))), iter: 100);

    [Fact]
    public void Search_that_may_take_no_step_still_gives_a_packing() => Any.Sample(problem =>
        PackingSearch.Best(problem, new SearchEffort { Left = 0 }, CancellationToken.None).Packing.Bins.Sum(bin => bin.Length) == problem.Sizes.Length, iter: 100);

    // Every way to part the sizes, one size after the other.
    static long Cheapest(PackingProblem problem)
    {
        var best = long.MaxValue;
        List<long> contents = [];
        void Place(int item)
        {
            if (item == problem.Sizes.Length)
            {
                best = Math.Min(best, contents.Sum(problem.Cost));
                return;
            }
            for (var bin = 0; bin < contents.Count; bin++)
            {
                if (contents[bin] + problem.Sizes[item] > problem.Largest) continue;
                contents[bin] += problem.Sizes[item];
                Place(item + 1);
                contents[bin] -= problem.Sizes[item];
            }
            contents.Add(problem.Sizes[item]);
            Place(item + 1);
            contents.RemoveAt(contents.Count - 1);
        }
        Place(0);
        return best;
    }
}

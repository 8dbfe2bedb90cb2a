using FlowCalc.Routes;

namespace FlowCalc.Tests.Published.Routes;

/// <summary>Packings whose least number of bins is published.</summary>
public class PackingTests
{
    static (Packing Packing, long Least) Best(long capacity, params long[] sizes) =>
        PackingSearch.Best(new PackingProblem([.. sizes.OrderDescending()], [capacity], 0), new SearchEffort(), TestContext.Current.CancellationToken);

    /// <summary>The bin-packing example of Google's OR-Tools documentation: eleven items, bins of 100, four bins (the data seen in the library's examples; the answer from memory).</summary>
    [Fact]
    public void Eleven_items_of_the_documentation_of_OR_Tools_take_four_bins()
    {
        var (packing, least) = Best(100, 48, 30, 19, 36, 36, 27, 42, 42, 36, 24, 30);

        Assert.Equal(4, packing.Bins.Length);
        Assert.Equal(400, least);
    }

    /// <summary>S. Martello and P. Toth, Knapsack Problems, Wiley 1990, chapter 8, their example of bounds: nine items, bins of 100, four bins where the contents alone ask for three (from memory).</summary>
    [Fact]
    public void Nine_items_of_Martello_and_Toth_take_four_bins()
    {
        var (packing, least) = Best(100, 70, 60, 50, 33, 33, 33, 11, 7, 3);

        Assert.Equal(4, packing.Bins.Length);
        Assert.Equal(400, least);
    }

    /// <summary>
    /// The paper machine of Wikipedia's article "Cutting stock problem", as OR-Tools carries it: 219 rolls of 13 widths from rolls of 5600 mm; 73 rolls are the best known (seen there),
    /// and as the widths are 72.7 rolls together, none can do with less.
    /// </summary>
    [Fact]
    public void Paper_machine_is_cut_close_to_its_73_rolls()
    {
        long[] widths = [1380, 1520, 1560, 1710, 1820, 1880, 1930, 2000, 2050, 2100, 2140, 2150, 2200];
        int[] orders = [22, 25, 12, 14, 18, 18, 20, 10, 12, 14, 16, 18, 20];

        var (packing, least) = Best(5600, [.. widths.Zip(orders).SelectMany(order => Enumerable.Repeat(order.First, order.Second))]);

        Assert.Equal(73 * 5600, least);
        Assert.InRange(packing.Bins.Length, 73, 74);
    }

    /// <summary>
    /// V. Chvátal, Linear Programming, Freeman 1983, chapter 13 (from memory): 97, 610, 395 and 211 finals of 45, 36, 31 and 14 in from raws of 100 in; the relaxation needs 452.25 of them,
    /// 453 are enough.
    /// </summary>
    [Fact]
    public void Raws_of_Chvatal_are_cut_close_to_his_453()
    {
        (long Width, int Count)[] finals = [(45, 97), (36, 610), (31, 395), (14, 211)];

        var (packing, least) = Best(100, [.. finals.SelectMany(final => Enumerable.Repeat(final.Width, final.Count))]);

        Assert.True(least <= 45_300);
        Assert.InRange(packing.Bins.Length, 453, 456);
    }

    /// <summary>
    /// D. S. Johnson's bad case for first-fit decreasing, in the form of M. R. Garey and D. S. Johnson, Computers and Intractability, 1979 (from memory): of 1/2 + e, 1/4 + 2e, 1/4 + e
    /// and 1/4 − 2e it needs 11 bins for 9. Here 1/2 is 500, e 10: 6, 6, 6 and 12 sizes.
    /// </summary>
    [Fact]
    public void Sizes_on_which_first_fit_decreasing_takes_eleven_bins_take_nine()
    {
        long[] sizes = [.. Enumerable.Repeat(510L, 6), .. Enumerable.Repeat(270L, 6), .. Enumerable.Repeat(260L, 6), .. Enumerable.Repeat(230L, 12)];
        var problem = new PackingProblem(sizes, [1000], 0);

        Assert.Equal(11, FirstFit.Pack(problem, 1000).Bins.Length);
        Assert.Equal(9, Best(1000, sizes).Packing.Bins.Length);
    }
}

using FlowCalc.ReferenceData;
using FlowCalc.Stock;

namespace FlowCalc.Tests.Stock;

public class FittingCatalogueTests
{
    [Fact]
    public void Ids_are_unique_plain_and_in_order()
    {
        Assert.Equal(FittingCatalogue.All.Select(fitting => fitting.Id).Distinct().Order(StringComparer.Ordinal), FittingCatalogue.All.Select(fitting => fitting.Id));
        Assert.All(FittingCatalogue.All, fitting => Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", fitting.Id));
    }

    /// <summary>Mitres: Rennels, Hudson, Pipe Flow (2012), as held in the documentation of the open library fluids. Threaded: a public handbook table.</summary>
    [Theory]
    [InlineData("elbow-90-mitred", 1.2)]
    [InlineData("elbow-60-mitred", 0.53)]
    [InlineData("elbow-45-mitred", 0.3)]
    [InlineData("elbow-90-threaded-half-inch", 2.1)]
    [InlineData("elbow-90-threaded-three-eighths-inch", 2.5)]
    public void An_elbow_has_the_published_loss(string id, double lossCoefficient)
    {
        Assert.Equal(lossCoefficient, FittingCatalogue.Find(id)?.LossCoefficient);
        Assert.Equal("elbow", FittingCatalogue.Find(id)?.Kind);
    }

    [Theory]
    [InlineData("union")]
    [InlineData("bulkhead-union")]
    public void A_union_leaves_its_bore_to_be_given_and_says_so(string id)
    {
        var union = FittingCatalogue.Find(id);

        Assert.NotNull(union);
        Assert.Null(union.Bore);
        Assert.Null(union.LossCoefficient);
        Assert.Null(union.Kv);
        Assert.Contains("must be given", union.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_source_is_known() =>
        Assert.All(FittingCatalogue.All.SelectMany(fitting => fitting.Sources), key => Assert.NotNull(SourceCatalogue.Find(key)));

    [Fact]
    public void No_insertion_depth_is_made_up() => Assert.All(FittingCatalogue.All, fitting => Assert.Null(fitting.Insertion));
}

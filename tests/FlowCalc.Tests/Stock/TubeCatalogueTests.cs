using FlowCalc.ReferenceData;
using FlowCalc.Stock;

namespace FlowCalc.Tests.Stock;

public class TubeCatalogueTests
{
    [Fact]
    public void The_catalogue_holds_unique_ids_of_letters_digits_and_marks()
    {
        Assert.Equal(52, TubeCatalogue.All.Length);
        Assert.Equal(TubeCatalogue.All.Length, TubeCatalogue.All.Select(tube => tube.Id).Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(TubeCatalogue.All, tube => Assert.Matches("^[A-Z]+-[0-9][0-9x._]*[a-z]?$", tube.Id));
    }

    [Fact]
    public void A_bore_is_the_outside_less_two_walls() =>
        Assert.All(TubeCatalogue.All, tube => Assert.Equal((tube.OutsideDiameter - 2 * tube.Wall).Millimeters, tube.Bore.Millimeters, tolerance: 1e-9));

    [Fact]
    public void A_tube_is_small_and_its_wall_thinner_than_a_third() => Assert.All(TubeCatalogue.All, tube =>
    {
        Assert.InRange(tube.OutsideDiameter.Millimeters, 3, 15);
        Assert.InRange(tube.Wall / tube.OutsideDiameter, 0.03, 0.33);
    });

    [Fact]
    public void Roughness_lies_in_its_range_and_in_the_range_of_the_contract() => Assert.All(TubeCatalogue.All, tube =>
    {
        Assert.InRange(tube.Roughness, tube.RoughnessLow, tube.RoughnessHigh);
        Assert.InRange(tube.RoughnessHigh / tube.Bore, 0, 0.05);
    });

    [Fact]
    public void Least_bend_radius_is_three_to_six_outside_diameters() => // 0.01: inch sizes are printed to a tenth of a millimetre
        Assert.All(TubeCatalogue.All, tube => Assert.InRange(tube.MinimumBendRadius / tube.OutsideDiameter, 2.99, 6.01));

    [Fact]
    public void Tubes_stand_by_family_then_outside_diameter_then_wall()
    {
        var families = TubeCatalogue.All.Select(Family).ToArray();
        string[] runs = [.. families.Where((family, index) => index == 0 || families[index - 1] != family)];

        Assert.Equal(runs.Distinct(), runs);
        Assert.All(TubeCatalogue.All.GroupBy(Family), group =>
            Assert.Equal(group.OrderBy(tube => tube.OutsideDiameter).ThenBy(tube => tube.Wall).Select(tube => tube.Id), group.Select(tube => tube.Id)));
    }

    [Theory]
    [InlineData("CU-8x1", 8, 6)]
    [InlineData("SS-10x1", 10, 8)]
    [InlineData("SSI-3_8", 9.525, 7.747)]
    public void A_tube_is_found_by_its_id(string id, double outsideMillimetres, double boreMillimetres)
    {
        var tube = TubeCatalogue.Find(id);

        Assert.NotNull(tube);
        Assert.Equal(outsideMillimetres, tube.OutsideDiameter.Millimeters, tolerance: 1e-9);
        Assert.Equal(boreMillimetres, tube.Bore.Millimeters, tolerance: 1e-9);
    }

    [Fact]
    public void No_tube_answers_to_another_spelling() => Assert.Null(TubeCatalogue.Find("cu-8x1"));

    [Fact]
    public void No_tube_claims_a_working_pressure_without_a_source() => Assert.All(TubeCatalogue.All, tube => Assert.Null(tube.WorkingPressure));

    [Fact]
    public void Every_tube_owns_up_to_what_is_common_practice_or_from_memory() => Assert.All(TubeCatalogue.All, tube =>
    {
        Assert.Contains("common practice, no source", tube.Note, StringComparison.Ordinal);
        Assert.Contains("common-practice", tube.Sources);
        Assert.Equal(tube.Note.Contains("from memory", StringComparison.Ordinal), tube.Sources.Contains("from-memory"));
        Assert.All(tube.Sources, key => Assert.NotNull(SourceCatalogue.Find(key)));
    });

    static string Family(CatalogueTube tube) => tube.Id.Split('-')[0];
}

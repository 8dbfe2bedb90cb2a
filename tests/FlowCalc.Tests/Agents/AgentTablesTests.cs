using FlowCalc.ReferenceData;

namespace FlowCalc.Tests.Agents;

public class AgentTablesTests
{
    static readonly CsvTable Water = CsvTable.Embedded("agents/water.csv");

    [Fact]
    public void Water_has_a_row_each_kelvin_from_0_to_99_degrees() =>
        Assert.Equal(Enumerable.Range(0, 100).Select(celsius => (double)celsius), Water.Rows.Select(row => row.Number("temperature_c")));

    /// <summary>A slip in a digit shows sixfold in the fourth differences, which are next to nothing for a smooth property in steps of a kelvin.</summary>
    [Theory]
    [InlineData("density_kg_m3", false, 4e-4)]
    [InlineData("viscosity_mpa_s", true, 4e-5)]
    [InlineData("vapour_pressure_pa", true, 4e-6)]
    public void Water_has_no_row_that_breaks_the_curve(string column, bool logarithmic, double largest)
    {
        double[] values = [.. Water.Rows.Select(row => logarithmic ? Math.Log(row.Number(column)) : row.Number(column))];

        for (var order = 0; order < 4; order++) values = [.. values.Zip(values.Skip(1), (left, right) => right - left)];

        Assert.Equal(96, values.Length);
        Assert.All(values, value => Assert.InRange(Math.Abs(value), 0, largest));
    }

    [Fact]
    public void Mixtures_stand_in_order_and_each_has_every_power_once()
    {
        var ids = CsvTable.Embedded("agents/mixtures.csv").Rows.Select(row => row.Text("id")).ToArray();
        var powers = from i in Enumerable.Range(0, 6) from j in Enumerable.Range(0, Math.Min(4, 6 - i)) select ((double)i, (double)j);
        var coefficients = CsvTable.Embedded("agents/mixture-coefficients.csv").Rows;

        Assert.Equal(ids.Order(StringComparer.Ordinal), ids);
        Assert.Equal(
            from id in ids from power in powers select (id, power.Item1, power.Item2),
            coefficients.Select(row => (row.Text("mixture"), row.Number("fraction_power"), row.Number("temperature_power"))));
    }

    [Fact]
    public void A_freezing_point_takes_the_powers_of_the_fraction_alone() =>
        Assert.All(CsvTable.Embedded("agents/mixture-coefficients.csv").Rows, row =>
            Assert.Equal(row.Number("temperature_power") > 0, row.OptionalNumber("freezing_point_c") is null));
}

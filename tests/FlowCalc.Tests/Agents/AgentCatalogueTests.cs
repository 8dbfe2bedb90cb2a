using FlowCalc.Agents;

namespace FlowCalc.Tests.Agents;

public class AgentCatalogueTests
{
    [Fact]
    public void The_catalogue_names_the_liquids_and_mixtures()
    {
        Assert.Equal(["water", "water-premix"], AgentCatalogue.Liquids.Select(agent => agent.Id));
        Assert.Equal(
            ["water-ethylene-glycol", "water-potassium-acetate", "water-potassium-carbonate", "water-potassium-formate", "water-propylene-glycol"],
            AgentCatalogue.Mixtures.Select(mixture => mixture.Id));
    }

    [Fact]
    public void The_catalogue_names_the_gases_and_liquefied_gases_by_kind()
    {
        string[] Of(AgentKind kind) => [.. AgentCatalogue.Expanding.Where(agent => agent.Kind == kind).Select(agent => agent.Id)];

        Assert.Equal(["nitrogen", "argon", "IG-541", "IG-55"], Of(AgentKind.InertGas));
        Assert.Equal(["HFC-23", "carbon-dioxide"], Of(AgentKind.LiquefiedGas));
        Assert.Equal(["HFC-227ea", "FK-5-1-12", "HFC-125", "HFC-236fa"], Of(AgentKind.LiquefiedUnderNitrogen));
        Assert.All(AgentCatalogue.Expanding, agent => Assert.Same(agent, AgentCatalogue.FindExpanding(agent.Id)));
    }

    [Fact]
    public void Ids_are_unique_over_all_kinds_of_agents()
    {
        string[] ids = [.. AgentCatalogue.Liquids.Select(agent => agent.Id), .. AgentCatalogue.Mixtures.Select(mixture => mixture.Id), .. AgentCatalogue.Expanding.Select(agent => agent.Id)];

        Assert.Equal(ids.Distinct(StringComparer.OrdinalIgnoreCase), ids);
    }

    [Fact]
    public void A_liquid_is_found_by_its_id_and_nothing_else_is()
    {
        Assert.Equal("water", AgentCatalogue.Find("water")?.Id);
        Assert.Null(AgentCatalogue.Find("Water"));
        Assert.Null(AgentCatalogue.Find("HFC-227ea"));
        Assert.Null(AgentCatalogue.Find("water-propylene-glycol"));
    }

    [Fact]
    public void Premix_has_the_values_of_water_and_says_that_this_is_weak()
    {
        var (water, premix) = (AgentCatalogue.Find("water")!, AgentCatalogue.Find("water-premix")!);

        Assert.Equal(water.Density(293.15), premix.Density(293.15));
        Assert.Equal(water.Viscosity(293.15), premix.Viscosity(293.15));
        Assert.Equal(273.15, water.FreezingPoint!.Value, tolerance: 1e-9);
        Assert.Equal(272.15, premix.FreezingPoint!.Value, tolerance: 1e-9);
        Assert.Contains("Weak", premix.Note, StringComparison.Ordinal);
        Assert.Contains("from-memory", premix.Sources);
    }

    [Fact]
    public void Water_is_covered_from_0_to_99_degrees_and_refused_outside()
    {
        var water = AgentCatalogue.Find("water")!;

        Assert.True(water.Covers(273.15));
        Assert.True(water.Covers(372.15));
        Assert.All([273.14, 372.16, double.NaN, double.PositiveInfinity, -1], temperature =>
        {
            Assert.False(water.Covers(temperature));
            Assert.Throws<ArgumentOutOfRangeException>(() => water.Density(temperature));
            Assert.Throws<ArgumentOutOfRangeException>(() => water.Viscosity(temperature));
            Assert.Throws<ArgumentOutOfRangeException>(() => water.VapourPressure(temperature));
        });
    }

    [Fact]
    public void An_end_of_the_range_that_lost_a_rounding_error_is_still_the_end()
    {
        var water = AgentCatalogue.Find("water")!;

        Assert.Equal(water.Density(273.15), water.Density(Math.BitDecrement(273.15)));
        Assert.Equal(water.Density(372.15), water.Density(Math.BitIncrement(372.15)));
    }

    [Theory]
    [InlineData("water-propylene-glycol", 0.0999)]
    [InlineData("water-propylene-glycol", 0.5001)]
    [InlineData("water-propylene-glycol", double.NaN)]
    [InlineData("water-potassium-carbonate", 0.36)]
    [InlineData("water-potassium-acetate", -0.2)]
    public void A_mass_fraction_beyond_the_data_is_a_fault_that_states_the_range(string mixture, double massFraction)
    {
        Assert.False(AgentCatalogue.TryMixture(mixture, massFraction, out var agent, out var fault));

        Assert.Null(agent);
        Assert.Contains("from mass fraction 0.1 to 0.", fault, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_mixture_is_a_fault_that_lists_the_known_ones()
    {
        Assert.False(AgentCatalogue.TryMixture("water-treacle", 0.2, out _, out var fault));

        Assert.Contains("water-treacle", fault, StringComparison.Ordinal);
        Assert.All(AgentCatalogue.Mixtures, mixture => Assert.Contains(mixture.Id, fault, StringComparison.Ordinal));
    }

    [Fact]
    public void A_mixture_is_covered_from_its_freezing_point_up()
    {
        Assert.True(AgentCatalogue.TryMixture("water-propylene-glycol", 0.4, out var agent, out var fault), fault);

        Assert.Equal("water-propylene-glycol", agent.Id);
        Assert.Equal("Water with propylene glycol, 40 % by mass", agent.Title);
        Assert.Equal(agent.FreezingPoint, agent.LowestTemperature);
        Assert.Equal(333.15, agent.HighestTemperature, tolerance: 1e-9);
        Assert.False(agent.Covers(agent.FreezingPoint!.Value - 0.01));
        Assert.False(agent.IsConstant);
    }

    [Fact]
    public void A_mixture_lists_its_freezing_points_from_weak_to_strong()
    {
        var info = AgentCatalogue.Mixtures.Single(mixture => mixture.Id == "water-potassium-carbonate");

        Assert.Equal([0.1, 0.15, 0.2, 0.25, 0.3, 0.35], info.FreezingPoints.Select(point => point.MassFraction));
        Assert.Equal(info.LowestTemperature, info.FreezingPoints[^1].FreezingPoint);
    }

    [Fact]
    public void A_mixture_below_0_degrees_has_the_vapour_pressure_of_water_at_0_degrees_as_its_bound()
    {
        Assert.True(AgentCatalogue.TryMixture("water-ethylene-glycol", 0.4, out var agent, out _));

        Assert.Equal(AgentCatalogue.Find("water")!.VapourPressure(273.15), agent.VapourPressure(260));
    }

    [Fact]
    public void Every_agent_names_sources_of_the_table()
    {
        var keys = AgentCatalogue.Liquids.SelectMany(agent => agent.Sources).Concat(AgentCatalogue.Mixtures.SelectMany(mixture => mixture.Sources));

        Assert.All(keys, key => Assert.NotNull(FlowCalc.ReferenceData.SourceCatalogue.Find(key)));
    }
}

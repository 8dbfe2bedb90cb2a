using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Catalogue;

public sealed class AgentTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Fact]
    public async Task Agents_are_listed_with_freezing_point_range_and_sources_that_resolve()
    {
        var answer = await caller.Get("/v1/agents").Json(200);

        var agents = answer.GetProperty("agents").EnumerateArray().ToList();
        var water = agents.Single(agent => agent.GetProperty("id").GetString() == "water");
        var premix = agents.Single(agent => agent.GetProperty("id").GetString() == "water-premix");
        Assert.Equal(0, water.GetProperty("freezingPoint").Value(), tolerance: 1e-9);
        Assert.Equal(-1, premix.GetProperty("freezingPoint").Value(), tolerance: 1e-9);
        Assert.Equal("°C", water.GetProperty("temperatures").GetProperty("highest").GetProperty("unit").GetString());
        var keys = answer.GetProperty("sources").EnumerateArray().Select(source => source.GetProperty("key").GetString()).ToHashSet();
        foreach (var entry in agents.Concat(answer.GetProperty("mixtures").EnumerateArray()))
            Assert.All(entry.GetProperty("sources").EnumerateArray(), key => Assert.Contains(key.GetString(), keys));
    }

    [Fact]
    public async Task Water_at_20_degrees_has_the_density_and_viscosity_of_the_tables()
    {
        var answer = await caller.Get("/v1/agents/water").Json(200);

        var row = Assert.Single(answer.GetProperty("strengths").EnumerateArray()).GetProperty("properties").EnumerateArray()
            .Single(row => Math.Abs(row.GetProperty("temperature").Value() - 20) < 1e-6);
        Assert.Equal(998.2, row.GetProperty("density").Value(), tolerance: 0.1);      // IAPWS-95 at 1 atm, to the tenth
        Assert.Equal(1.002, row.GetProperty("viscosity").Value(), tolerance: 0.002);  // IAPWS 2008 at 1 atm, mPa·s
    }

    [Fact]
    public async Task Stronger_mixture_freezes_at_a_lower_temperature()
    {
        var answer = await caller.Get("/v1/agents/water-propylene-glycol").Json(200);

        var strengths = answer.GetProperty("strengths").EnumerateArray().ToList();
        var freezing = strengths.Select(strength => strength.GetProperty("freezingPoint").Value()).ToList();
        Assert.True(strengths.Count >= 5, $"{strengths.Count} strengths");
        Assert.Equal(freezing.OrderDescending(), freezing);
        Assert.NotEmpty(answer.GetProperty("sources").EnumerateArray());
    }

    [Fact]
    public async Task Agents_in_other_units_are_the_same_temperatures()
    {
        var metric = await caller.Get("/v1/agents").Json(200);
        var us = await caller.Get("/v1/agents?units=us").Json(200);

        foreach (var (celsius, fahrenheit) in metric.GetProperty("agents").EnumerateArray().Zip(us.GetProperty("agents").EnumerateArray()))
            foreach (var end in (string[])["lowest", "highest"])
                Assert.Equal(celsius.GetProperty("temperatures").GetProperty(end).Value() * 1.8 + 32, fahrenheit.GetProperty("temperatures").GetProperty(end).Value(), tolerance: 1e-9);
    }

    [Theory]
    [InlineData("Water")]
    [InlineData("nothing")]
    [InlineData("%F0%9F%94%A5")]
    public async Task Agent_that_is_not_there_is_a_404_that_says_where_the_list_is(string id)
    {
        var fault = await caller.Get("/v1/agents/" + id).Fault(404);

        Assert.Contains("/v1/agents", fault.GetProperty("detail").GetString()!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Unknown_units_are_refused() => await caller.Get("/v1/agents?units=imperial").Fault(422);
}

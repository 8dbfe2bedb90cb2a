using FlowCalc.Networks;

namespace FlowCalc.Tests.Networks;

public sealed class NetworkBuilderTests
{
    static readonly RunGeometry Tube = new(0.006, 1, 0.001, 0, 0);

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    public void The_first_run_has_no_parent(int parent) => Assert.Throws<ArgumentOutOfRangeException>(() => new NetworkBuilder(2).AddRun(parent, Tube));

    [Theory]
    [InlineData(-1)]
    [InlineData(1)]
    [InlineData(2)]
    public void Every_other_run_leaves_a_point_that_is_there(int parent)
    {
        var builder = new NetworkBuilder(2);
        builder.AddRun(-1, Tube);

        Assert.Throws<ArgumentOutOfRangeException>(() => builder.AddRun(parent, Tube));
    }

    [Fact]
    public void Nozzles_come_in_rising_order_each_with_its_own_area()
    {
        var builder = new NetworkBuilder(4);
        builder.AddRun(-1, Tube);
        for (var j = 1; j < 4; j++) builder.AddRun(0, Tube);
        builder.AddNozzle(3, 3e-6);
        builder.AddNozzle(1, 1e-6);
        builder.AddNozzle(2, 2e-6);

        var network = builder.Build();

        Assert.Equal([1, 2, 3], network.Nozzles);
        Assert.Equal([1e-6, 2e-6, 3e-6], network.NozzleArea);
    }

    [Theory]
    [InlineData(0.0, false)]
    [InlineData(0.5, true)]
    [InlineData(-0.5, true)]
    public void A_network_knows_whether_any_point_lies_higher_or_lower(double rise, bool hasRise)
    {
        var builder = new NetworkBuilder(2);
        builder.AddRun(-1, Tube);
        builder.AddRun(0, Tube with { Rise = rise });
        var network = builder.Build();

        Assert.Equal(hasRise, network.HasRise);
        Assert.Equal(hasRise, network.WithNozzles([]).HasRise);
        Assert.True(network.WithRise([0, 1]).HasRise);
        Assert.False(network.WithRise([0, 0]).HasRise);
    }
}

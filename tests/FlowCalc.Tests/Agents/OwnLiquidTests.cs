using FlowCalc.Agents;

namespace FlowCalc.Tests.Agents;

public class OwnLiquidTests
{
    [Fact]
    public void An_own_liquid_is_the_same_at_every_temperature()
    {
        var agent = LiquidAgent.Constant(1100, 2e-3, 260);

        Assert.True(agent.IsConstant);
        Assert.Equal(260, agent.FreezingPoint);
        Assert.All([200.0, 293.15, 400], temperature =>
        {
            Assert.True(agent.Covers(temperature));
            Assert.Equal(1100, agent.Density(temperature));
            Assert.Equal(2e-3, agent.Viscosity(temperature));
            Assert.Equal(0, agent.VapourPressure(temperature));
        });
    }

    [Fact]
    public void An_own_liquid_may_leave_its_freezing_point_open() => Assert.Null(LiquidAgent.Constant(1000, 1e-3, null).FreezingPoint);

    [Theory]
    [InlineData(0, 1e-3, 270.0, "density")]
    [InlineData(double.NaN, 1e-3, 270.0, "density")]
    [InlineData(1000, -1e-3, 270.0, "viscosity")]
    [InlineData(1000, double.PositiveInfinity, 270.0, "viscosity")]
    [InlineData(1000, 1e-3, 0.0, "freezingPoint")]
    public void An_own_liquid_refuses_what_is_not_above_zero(double density, double viscosity, double freezingPoint, string parameter) =>
        Assert.Throws<ArgumentOutOfRangeException>(parameter, () => LiquidAgent.Constant(density, viscosity, freezingPoint));

    [Fact]
    public void An_own_liquid_refuses_a_temperature_that_is_no_number()
    {
        var agent = LiquidAgent.Constant(1000, 1e-3, null);

        Assert.Throws<ArgumentOutOfRangeException>(() => agent.Density(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => agent.Density(-1));
    }
}

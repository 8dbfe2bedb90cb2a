using FlowCalc.Agents;

namespace FlowCalc.Tests.Peers.Agents;

/// <summary>Expansion at constant entropy from saturated liquid at 20 °C in homogeneous equilibrium, beside a separate evaluation of the same equations (to the digits printed).</summary>
public sealed class ExpansionTests
{
    [Theory]
    [InlineData("carbon-dioxide", 50, 589.7, -1082)]
    [InlineData("carbon-dioxide", 40, 399.2, -3151)]
    [InlineData("carbon-dioxide", 30, 257.4, -6278)]
    [InlineData("carbon-dioxide", 20, 149.6, -11371)]
    [InlineData("carbon-dioxide", 10, 66.3, -21307)]
    [InlineData("HFC-227ea", 3.5, 542.1, -49.0)]
    [InlineData("HFC-227ea", 3.0, 263.2, -187.3)]
    [InlineData("HFC-227ea", 2.5, 150.4, -443.7)]
    [InlineData("HFC-227ea", 2.0, 90.0, -878.6)]
    [InlineData("HFC-227ea", 1.01325, 29.1, -2851)]
    public void Density_and_work_agree(string id, double bar, double density, double enthalpy)
    {
        var (fluid, start) = Start(id);
        var (volume, work) = Way(fluid, start).Equilibrium(bar * 1e5);
        Assert.Equal(density, 1 / volume, tolerance: density > 100 ? 0.06 + 1e-4 * density : 0.06);
        Assert.Equal(-enthalpy, work, tolerance: 0.6 + 3e-4 * -enthalpy);
    }

    [Theory]
    [InlineData("carbon-dioxide", 31_699, 40.53)]
    [InlineData("HFC-227ea", 5_387, 3.424)]
    [InlineData("HFC-23", 27_416, 29.62)]
    [InlineData("HFC-125", 12_470, 9.841)]
    public void The_critical_flux_agrees(string id, double flux, double bar)
    {
        var (fluid, start) = Start(id);
        var (found, throat) = NozzleFlux.Of(Way(fluid, start), start.Pressure, 101_325, NozzleModel.Equilibrium);
        Assert.Equal(flux, found, tolerance: flux * 2e-4);
        Assert.Equal(bar * 1e5, throat, tolerance: bar * 1e5 * 2e-3);
    }

    static (Fluid Fluid, SaturatedPoint Start) Start(string id) => (Fluid.Of(id), Fluid.Of(id).Saturation!.AtTemperature(293.15));

    static INozzleWay Way(Fluid fluid, in SaturatedPoint start) =>
        new PureStream(fluid, start.Pressure, start.LiquidEnthalpy, start.Temperature, start.LiquidDensity, 50_000).Nozzle(start.Pressure);
}

using CsCheck;
using FlowCalc.Agents;

namespace FlowCalc.Tests.Properties.Agents;

/// <summary>What holds on every way from a bottle to the surroundings, and how near the tables are to it.</summary>
public sealed class ExpansionLaws
{
    const double Ambient = 101_325;

    static readonly string[] Ids = ["carbon-dioxide", "HFC-23", "HFC-125", "HFC-227ea"];

    // Saturated at a temperature over 250 K and below the critical, with a vapour part before the nozzle.
    static readonly Gen<(int Agent, double Part, double Vapour)> Saturated =
        Gen.Select(Gen.Int[0, Ids.Length - 1], Gen.Double[0, 1], Gen.Double[0, 0.9]).Select((agent, part, vapour) => (agent, part, vapour));

    [Fact]
    public void The_more_boils_the_less_flows() => Saturated.Sample(state =>
    {
        var (fluid, start) = Start(state.Agent, state.Part);
        if (start.Pressure < 1.5 * Ambient) return true;
        var enthalpy = start.LiquidEnthalpy + state.Vapour * start.Latent;
        var way = new PureStream(fluid, start.Pressure, enthalpy, start.Temperature, start.LiquidDensity, Ambient / 2).Nozzle(start.Pressure);
        double Flux(NozzleModel model) => NozzleFlux.Of(way, start.Pressure, Ambient, model).Flux;
        var (equilibrium, delayed, frozen) = (Flux(NozzleModel.Equilibrium), Flux(NozzleModel.Delayed), Flux(NozzleModel.Frozen));
        return equilibrium > 0 && delayed >= equilibrium * (1 - 1e-6) && frozen >= delayed * (1 - 1e-6);
    }, iter: 300);

    [Theory]
    [InlineData("carbon-dioxide", 293.15, 0)]
    [InlineData("carbon-dioxide", 293.15, 1)]
    [InlineData("carbon-dioxide", 253.15, 0)]
    [InlineData("HFC-23", 283.15, 0)]
    [InlineData("HFC-227ea", 293.15, 0)]
    public void The_table_of_a_saturated_agent_is_within_its_tolerance(string id, double kelvin, double vapour)
    {
        var fluid = Fluid.Of(id);
        var start = fluid.Saturation!.AtTemperature(kelvin);
        PureStream Stream() => new(fluid, start.Pressure, start.LiquidEnthalpy + vapour * start.Latent, kelvin, vapour > 0 ? start.VapourDensity : start.LiquidDensity, Ambient / 2);
        Check(Stream, start.Pressure, 1e-6, 1e-2);
    }

    [Theory]
    // Hot bottles of one phase that boil on their way, beside the critical point; and gases.
    [InlineData("carbon-dioxide", 333.15, 680, 2e-3, 2e-2)]
    [InlineData("HFC-23", 323.15, 860, 5e-3, 2e-2)]
    [InlineData("nitrogen", 288.15, 223, 1e-6, 1e-5)]
    // Argon cools in the throat to where it is continued as a gas.
    [InlineData("argon", 288.15, 356, 1e-6, 1e-4)]
    [InlineData("IG-541", 288.15, 270, 1e-6, 1e-5)]
    [InlineData("IG-55", 253.15, 300, 1e-6, 1e-5)]
    public void The_table_of_a_dense_fluid_is_within_its_tolerance(string id, double kelvin, double density, double path, double nozzle)
    {
        var fluid = Fluid.Of(id);
        var state = fluid.At(kelvin, density);
        Check(() => new(fluid, state.Pressure, state.Enthalpy, kelvin, density, Ambient / 2), state.Pressure, path, nozzle);
    }

    static void Check(Func<PureStream> stream, double top, double path, double nozzle)
    {
        foreach (var model in Enum.GetValues<NozzleModel>())
        {
            var table = ExpansionTable.TryBuild(stream(), top, Ambient, model)!;
            var direct = stream();
            double worst = 0, worstFlux = 0;
            for (var i = 0; i < 200; i++)
            {
                var pressure = top * Math.Exp(-(i + 0.3) / 200 * Math.Log(top / (0.6 * Ambient)));
                var at = direct.At(pressure);
                worst = Math.Max(worst, Math.Abs(table.At(Math.Log(pressure)).Density / at.Density - 1));
                if (pressure < 1.01 * Ambient) continue;
                var flux = NozzleFlux.Of(direct.Nozzle(pressure), pressure, Ambient, model).Flux;
                worstFlux = Math.Max(worstFlux, Math.Abs(table.Nozzle(Math.Log(pressure)).Flux / flux - 1));
            }
            Assert.InRange(worst, 0, path);
            Assert.InRange(worstFlux, 0, model == NozzleModel.Frozen ? 4 * nozzle : nozzle);
        }
    }

    static (Fluid Fluid, SaturatedPoint Start) Start(int agent, double part)
    {
        var fluid = Fluid.Of(Ids[agent]);
        return (fluid, fluid.Saturation!.AtTemperature(250 + part * (0.99 * fluid.CriticalTemperature - 250)));
    }
}

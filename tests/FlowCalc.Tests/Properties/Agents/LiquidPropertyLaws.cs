using CsCheck;
using FlowCalc.Agents;

namespace FlowCalc.Tests.Properties.Agents;

public class LiquidPropertyLaws
{
    static readonly Gen<MixtureInfo> Mixtures = Gen.Int[0, AgentCatalogue.Mixtures.Length - 1].Select(index => AgentCatalogue.Mixtures[index]);

    static readonly Gen<LiquidAgent> Agents = Gen.OneOf(
        Gen.Int[0, AgentCatalogue.Liquids.Length - 1].Select(index => AgentCatalogue.Liquids[index]),
        Gen.Select(Mixtures, Gen.Double[0, 1]).Select((mixture, part) => Mixed(mixture, part)));

    static readonly Gen<(LiquidAgent Agent, double Low, double High)> AgentsAtTwoTemperatures =
        Gen.Select(Agents, Gen.Double[0, 1], Gen.Double[0, 1]).Select((agent, a, b) => (agent, At(agent, Math.Min(a, b)), At(agent, Math.Max(a, b))));

    [Fact]
    public void Viscosity_falls_as_a_liquid_warms() => AgentsAtTwoTemperatures.Sample(
        sample => sample.High - sample.Low < 1e-6 || sample.Agent.Viscosity(sample.High) < sample.Agent.Viscosity(sample.Low), iter: 20_000);

    [Fact]
    public void Vapour_pressure_never_falls_as_a_liquid_warms() => AgentsAtTwoTemperatures.Sample(
        sample => sample.Agent.VapourPressure(sample.High) >= sample.Agent.VapourPressure(sample.Low), iter: 20_000);

    [Fact]
    public void Density_falls_as_a_liquid_warms_above_the_maximum_of_water() => AgentsAtTwoTemperatures.Sample(
        sample => sample.Low < 278 || sample.High - sample.Low < 1e-6 || sample.Agent.Density(sample.High) < sample.Agent.Density(sample.Low), iter: 20_000);

    [Fact]
    public void Density_and_viscosity_change_smoothly() => AgentsAtTwoTemperatures.Sample(sample =>
    {
        var (agent, temperature) = (sample.Agent, Math.Min(sample.Low, sample.Agent.HighestTemperature - 0.01));
        return Math.Abs(agent.Density(temperature + 0.01) / agent.Density(temperature) - 1) < 1e-5
            && Math.Abs(agent.Viscosity(temperature + 0.01) / agent.Viscosity(temperature) - 1) < 2e-3;
    }, iter: 20_000);

    [Fact]
    public void A_stronger_mixture_freezes_lower_and_is_denser_and_thicker() =>
        Gen.Select(Mixtures, Gen.Double[0, 0.99], Gen.Double[0, 1]).Sample((mixture, part, warmth) =>
        {
            var (weak, strong) = (Mixed(mixture, part), Mixed(mixture, part + 0.01));
            var temperature = At(weak, warmth);
            return strong.FreezingPoint < weak.FreezingPoint
                && strong.Density(temperature) > weak.Density(temperature)
                && strong.Viscosity(temperature) > weak.Viscosity(temperature);
        }, iter: 20_000);

    [Fact]
    public void Values_are_finite_and_above_zero_over_the_whole_range() => AgentsAtTwoTemperatures.Sample(
        sample => new[] { sample.Agent.Density(sample.Low), sample.Agent.Viscosity(sample.Low), sample.Agent.VapourPressure(sample.Low) }
            .All(value => value > 0 && double.IsFinite(value)), iter: 20_000);

    static LiquidAgent Mixed(MixtureInfo mixture, double part)
    {
        var fraction = Math.Min(mixture.LowestMassFraction + part * (mixture.HighestMassFraction - mixture.LowestMassFraction), mixture.HighestMassFraction);
        Assert.True(AgentCatalogue.TryMixture(mixture.Id, fraction, out var agent, out var fault), fault);
        return agent;
    }

    static double At(LiquidAgent agent, double part) =>
        Math.Min(agent.LowestTemperature + part * (agent.HighestTemperature - agent.LowestTemperature), agent.HighestTemperature);
}

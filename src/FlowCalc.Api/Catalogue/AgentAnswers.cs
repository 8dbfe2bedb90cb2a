using System.Collections.Immutable;
using FlowCalc.Agents;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Faults;
using FlowCalc.Quantities;

namespace FlowCalc.Api.Catalogue;

/// <summary>Writes the catalogue of agents.</summary>
internal static class AgentAnswers
{
    const double Step = 10, IcePoint = 273.15;

    static IEnumerable<Agent> Named => AgentCatalogue.Liquids.Concat<Agent>(AgentCatalogue.Expanding);

    /// <summary>All agents.</summary>
    public static AgentsAnswer All(UnitWriter write) => new(
        [.. Named.Select(agent =>
            new AgentAnswer(agent.Id, agent.Title, KindWord.Of(agent.Kind), FreezingPoint(agent, write), Range(agent, write), agent.Note, agent.Sources))],
        [.. AgentCatalogue.Mixtures.Select(mixture => Of(mixture, write))],
        SourceAnswers.Of([.. Named.Select(agent => agent.Sources), .. AgentCatalogue.Mixtures.Select(mixture => mixture.Sources)]));

    /// <summary>One agent; null where there is none of that id.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="ask">The bottle of its chart.</param>
    /// <param name="write">Units.</param>
    /// <param name="fault">What does not fit the agent; null where all does.</param>
    public static AgentDetailAnswer? Find(string id, in ChartAsk ask, UnitWriter write, out Problem? fault)
    {
        fault = null;
        if (AgentCatalogue.FindExpanding(id) is { } expanding)
            return (fault = ask.Check(expanding)) is null ? ExpandingAgentAnswers.Of(expanding, ask, Range(expanding, write), write, out fault) : null;
        if (AgentCatalogue.Find(id) is { } agent)
        {
            fault = ask.Check(agent);
            return new(agent.Id, agent.Title, KindWord.Of(agent.Kind), Range(agent, write), agent.Note, [], [Strength(agent, null, write)], [], null, SourceAnswers.Of([agent.Sources]));
        }
        if (AgentCatalogue.Mixtures.FirstOrDefault(known => known.Id == id) is not { } mixture)
            return null;

        var strengths = mixture.FreezingPoints
            .Select(point => AgentCatalogue.TryMixture(id, point.MassFraction, out var solution, out _) ? (Agent: solution, point.MassFraction) : default)
            .Where(strength => strength.Agent is not null)
            .ToImmutableArray();
        fault = ask.Check(strengths[0].Agent!);
        return new(
            mixture.Id, mixture.Title, KindWord.Of(AgentKind.Liquid), Range(strengths[0].Agent!, write), strengths[0].Agent!.Note, [], [.. strengths.Select(strength => Strength(strength.Agent!, strength.MassFraction, write))], [], null, SourceAnswers.Of([mixture.Sources]));
    }

    static MixtureAnswer Of(MixtureInfo mixture, UnitWriter write) => new(
        mixture.Id, mixture.Title, mixture.LowestMassFraction, mixture.HighestMassFraction,
        new(Temperature(mixture.LowestTemperature, write), Temperature(mixture.HighestTemperature, write)),
        [.. mixture.FreezingPoints.Select(point => new FreezingPointAnswer(point.MassFraction, Temperature(point.FreezingPoint, write)))],
        mixture.Sources);

    static StrengthAnswer Strength(LiquidAgent agent, double? massFraction, UnitWriter write) => new(
        massFraction, FreezingPoint(agent, write), Range(agent, write),
        [.. Temperatures(agent).Select(at => new PropertyRow(
            Temperature(at, write), write.Of(agent.Density(at), QuantityKind.Density), write.Of(agent.Viscosity(at), QuantityKind.Viscosity)))]);

    static IEnumerable<double> Temperatures(LiquidAgent agent)
    {
        yield return agent.LowestTemperature;
        for (var step = Math.Floor((agent.LowestTemperature - IcePoint) / Step) + 1; IcePoint + step * Step < agent.HighestTemperature; step++)
            yield return IcePoint + step * Step;
        yield return agent.HighestTemperature;
    }

    static Quantity? FreezingPoint(Agent agent, UnitWriter write) => agent.FreezingPoint is { } point ? Temperature(point, write) : null;

    static TemperatureRange Range(Agent agent, UnitWriter write) => new(Temperature(agent.LowestTemperature, write), Temperature(agent.HighestTemperature, write));

    static Quantity Temperature(double kelvin, UnitWriter write) => write.Of(kelvin, QuantityKind.Temperature);
}

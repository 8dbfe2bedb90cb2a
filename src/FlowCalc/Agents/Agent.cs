using System.Collections.Immutable;

namespace FlowCalc.Agents;

/// <summary>What puts the fire out. Immutable, safe to share between threads.</summary>
public abstract class Agent
{
    /// <summary>32 °F is 273.15 K less a rounding error in some ways of converting: the ends of a range give way by this much, K.</summary>
    const double Hair = 1e-6;

    private protected Agent(string id, string title, string? note, ImmutableArray<string> sources) => (Id, Title, Note, Sources) = (id, title, note, sources);

    /// <summary>Id in the catalogue; of a mixture, the mixture's; <c>own-liquid</c> for one of the user's.</summary>
    public string Id { get; }

    /// <summary>Name for people, with the mass fraction of a mixture.</summary>
    public string Title { get; }

    /// <summary>What to know before relying on the figures, or null.</summary>
    public string? Note { get; }

    /// <summary>Keys into <see cref="ReferenceData.SourceCatalogue"/>; empty for one's own liquid.</summary>
    public ImmutableArray<string> Sources { get; }

    /// <summary>How it is kept and how it flows.</summary>
    public abstract AgentKind Kind { get; }

    /// <summary>Temperature at which the first ice forms, K; null where it was not given or there is none in its range.</summary>
    public abstract double? FreezingPoint { get; }

    /// <summary>Lowest temperature of bottle and agent that is answered, K; 0 for a liquid of constant properties.</summary>
    public abstract double LowestTemperature { get; }

    /// <summary>Highest temperature of bottle and agent that is answered, K; infinite for a liquid of constant properties.</summary>
    public abstract double HighestTemperature { get; }

    /// <summary>Whether its density changes along the way: a gas, or a liquid that boils.</summary>
    public bool IsExpanding => Kind != AgentKind.Liquid;

    /// <summary>Whether a temperature is answered.</summary>
    /// <param name="temperature">Temperature, K.</param>
    /// <returns>True from <see cref="LowestTemperature"/> to <see cref="HighestTemperature"/>, ends included to within a millionth of a kelvin; false for NaN.</returns>
    public bool Covers(double temperature) =>
        double.IsFinite(temperature) && temperature >= LowestTemperature - Hair && temperature <= HighestTemperature + Hair;

    /// <summary>Density of what fills a shut line, kg/m³.</summary>
    /// <param name="temperature">Temperature, K, in the range.</param>
    /// <param name="pressure">Absolute pressure, Pa; a liquid agent does not heed it.</param>
    internal abstract double RestDensity(double temperature, double pressure);
}

using System.Text.Json;
using FlowCalc.Agents;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of an agent described in place: a mixture, or a liquid of one's own.</summary>
enum AgentField
{
    Mixture,
    MassFraction,
    Density,
    Viscosity,
    FreezingPoint,
    Note,
}

/// <summary>Reads the agent.</summary>
static class AgentReader
{
    const string Right = "an id of the catalogue, an object with mixture and massFraction, or one with density, viscosity and, if known, freezingPoint";

    /// <summary>The agent; null where it is missing or none.</summary>
    public static Agent? Read(ReadingContext context, JsonValue element)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Undefined:
                return null;
            case JsonValueKind.String:
                return Named(context, element);
            case JsonValueKind.Object:
                return LayoutFields.Agent.TryRead(context, element, out var members) ? Described(context, members) : null;
            default:
                context.Faults.Add(element, $"read {Said.Value(element)}: an agent is {Right}");
                return null;
        }
    }

    static Agent? Named(ReadingContext context, JsonValue element)
    {
        var id = TextValue.Name(context, element, "an agent's id");
        if (id is null) return null;
        Agent? agent = AgentCatalogue.Find(id);
        agent ??= AgentCatalogue.FindExpanding(id);
        if (agent is null) context.Faults.Add(element, $"read {Said.Value(element)}: no agent of the catalogue{NearNames.Advice(context, id, AgentCatalogue.Ids)}; besides, an agent may be {Right}");
        else if (agent.Note is { } note) context.Assumptions.Add("/agent", $"{id}: values of the catalogue", note);
        return agent;
    }

    static LiquidAgent? Described(ReadingContext context, in Members<AgentField> members)
    {
        if (members.Has(AgentField.Note)) TextValue.Read(context, members[AgentField.Note], "a note");
        if (!members.Has(AgentField.Mixture) && !members.Has(AgentField.MassFraction)) return Own(context, members);
        foreach (var field in (ReadOnlySpan<AgentField>)[AgentField.Density, AgentField.Viscosity, AgentField.FreezingPoint])
            members.Refuses(context, field, "a mixture's properties follow from its mass fraction; leave it out, or leave out mixture and massFraction");
        return Mixed(context, members);
    }

    static LiquidAgent? Mixed(ReadingContext context, in Members<AgentField> members)
    {
        var known = AgentCatalogue.Mixtures.Select(mixture => mixture.Id);
        var hasMixture = members.Requires(context, AgentField.Mixture, "the id of a mixture of the catalogue");
        var hasFraction = members.Requires(context, AgentField.MassFraction, Sizes.MassFraction);
        var mixture = TextValue.Name(context, members[AgentField.Mixture], "a mixture");
        var fraction = NumberValue.Read(context, members[AgentField.MassFraction], Sizes.MassFraction);
        if (!hasMixture || mixture is null) return null;
        if (!known.Contains(mixture))
        {
            context.Faults.Add(members[AgentField.Mixture], $"read {Said.Name(mixture)}: no mixture of the catalogue{NearNames.Advice(context, mixture, [.. known])}");
            return null;
        }
        if (!hasFraction || !double.IsFinite(fraction)) return null;
        if (AgentCatalogue.TryMixture(mixture, fraction, out var agent, out var fault)) return agent;
        context.Faults.Add(members[AgentField.MassFraction], fault);
        return null;
    }

    static LiquidAgent? Own(ReadingContext context, in Members<AgentField> members)
    {
        var complete = members.Requires(context, AgentField.Density, Sizes.Density);
        complete &= members.Requires(context, AgentField.Viscosity, Sizes.Viscosity);
        var density = QuantityValue.Read(context, members[AgentField.Density], Sizes.Density);
        var viscosity = QuantityValue.Read(context, members[AgentField.Viscosity], Sizes.Viscosity);
        var freezing = QuantityValue.Read(context, members[AgentField.FreezingPoint], Sizes.FreezingPoint);
        if (!complete || !double.IsFinite(density + viscosity)) return null;
        if (members.Has(AgentField.FreezingPoint) && !double.IsFinite(freezing)) return null;
        return LiquidAgent.Constant(density, viscosity, members.Has(AgentField.FreezingPoint) ? freezing : null);
    }
}

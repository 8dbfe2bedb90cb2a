using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Requests;

namespace FlowCalc.Api.Catalogue;

/// <summary><c>GET /v1/agents</c> and <c>GET /v1/agents/{id}</c>.</summary>
internal static class AgentEndpoints
{
    const string Path = "/v1/agents";

    /// <summary>Puts the calls on the service.</summary>
    public static void MapAgents(this IEndpointRouteBuilder app)
    {
        app.MapGet(Path, (Delegate)AnswerAllAsync)
            .WithName("Agents").WithTags("Catalogue")
            .WithSummary("Agents that a layout may name")
            .WithDescription("Liquids, mixtures, gases and liquefied gases, the temperatures at which they are answered, and where the figures come from.")
            .DescribeRead<AgentsAnswer>(takesUnits: true);
        app.MapGet(Path + "/{id}", AnswerOneAsync)
            .WithName("Agent").WithTags("Catalogue")
            .WithSummary("One agent with its properties")
            .WithDescription("Of a liquid density and viscosity over the temperatures that the data reach; for a mixture at each of its strengths. Of a liquefied gas its saturation; of it and of a gas the pressure of a bottle over its temperature, for the fill and charge pressure that the query asks or the usual ones, and what to know where people may be.")
            .DescribeRead<AgentDetailAnswer>(takesUnits: true, named: new("id", "Id of the agent; case counts.", "HFC-227ea"), isChart: true);
    }

    static Task AnswerAllAsync(HttpContext context)
    {
        var write = QueryUnits.Read(context.Request, out var fault);
        return fault is null ? AnswerWriter.WriteAsync(context, AgentAnswers.All(write), AnswerJson.Default.AgentsAnswer) : ProblemWriter.WriteAsync(context, fault);
    }

    // A chart is worked out, so that it takes a place as the calls on a document do.
    static async Task AnswerOneAsync(HttpContext context, string id, ServiceLimits limits, WorkPlaces places)
    {
        var ask = ChartAsk.Read(context.Request, out var write, out var fault);
        var agent = fault is null ? await FindAsync() : null;
        await (agent is null
            ? ProblemWriter.WriteAsync(context, fault ?? Problems.NoSuch("agent", id, Path))
            : AnswerWriter.WriteAsync(context, agent, AnswerJson.Default.AgentDetailAnswer));

        async Task<AgentDetailAnswer?> FindAsync()
        {
            using var place = await places.TakeAsync(context.RequestAborted);
            if (place.IsAcquired) return AgentAnswers.Find(id, ask, write, out fault) is { } found && fault is null ? found : null;
            fault = Problems.Busy(limits);
            return null;
        }
    }
}

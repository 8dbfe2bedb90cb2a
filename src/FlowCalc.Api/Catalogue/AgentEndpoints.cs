using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Faults;
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
            .WithDescription("Liquids and mixtures with their freezing points, the temperatures that their data reach, and where the figures come from.")
            .DescribeRead<AgentsAnswer>(takesUnits: true);
        app.MapGet(Path + "/{id}", AnswerOneAsync)
            .WithName("Agent").WithTags("Catalogue")
            .WithSummary("One agent with its properties")
            .WithDescription("Density and viscosity over the temperatures that the data reach; for a mixture at each of its strengths.")
            .DescribeRead<AgentDetailAnswer>(takesUnits: true, named: new("id", "Id of the agent; case counts.", "water-propylene-glycol"));
    }

    static Task AnswerAllAsync(HttpContext context)
    {
        var write = QueryUnits.Read(context.Request, out var fault);
        return fault is null ? AnswerWriter.WriteAsync(context, AgentAnswers.All(write), AnswerJson.Default.AgentsAnswer) : ProblemWriter.WriteAsync(context, fault);
    }

    static Task AnswerOneAsync(HttpContext context, string id)
    {
        var write = QueryUnits.Read(context.Request, out var fault);
        if (fault is null && AgentAnswers.Find(id, write) is { } agent)
            return AnswerWriter.WriteAsync(context, agent, AnswerJson.Default.AgentDetailAnswer);
        return ProblemWriter.WriteAsync(context, fault ?? Problems.NoSuch("agent", id, Path));
    }
}

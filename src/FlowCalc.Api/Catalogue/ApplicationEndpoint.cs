using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Requests;
using FlowCalc.Discharge;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Coverage;
using FlowCalc.Mounts;
using FlowCalc.Upkeep;

namespace FlowCalc.Api.Catalogue;

/// <summary><c>GET /v1/applications</c>.</summary>
internal static class ApplicationEndpoint
{
    /// <summary>Puts the call on the service.</summary>
    public static void MapApplications(this IEndpointRouteBuilder app) =>
        app.MapGet("/v1/applications", (Delegate)AnswerAsync)
            .WithName("Applications").WithTags("Catalogue")
            .WithSummary("Applications that a layout may name")
            .WithDescription("What each application stands for where a document does not say: times of discharge, positions, protection, load cases, intervals of upkeep, with sources.")
            .DescribeRead<ApplicationsAnswer>(takesUnits: true);

    static Task AnswerAsync(HttpContext context)
    {
        var write = QueryUnits.Read(context.Request, out var fault);
        return fault is null ? AnswerWriter.WriteAsync(context, Answer(write), AnswerJson.Default.ApplicationsAnswer) : ProblemWriter.WriteAsync(context, fault);
    }

    static ApplicationsAnswer Answer(UnitWriter write) => new(
        [.. ApplicationDefaults.All.Select(one => Application(one, write))],
        SourceAnswers.Of([.. ApplicationDefaults.All.Select(one => one.Sources), .. ApplicationRequirement.All.Select(one => one.Sources)]));

    static ApplicationAnswer Application(ApplicationDefaults one, UnitWriter write) => new(
        one.Id, one.Title, one.WorksAnyWayUp, one.Protection == Protection.Flooding ? "flooding" : "local", one.LeastZones, one.Note,
        [.. ApplicationRequirement.All.Where(asked => asked.Application == one.Id).Select(asked => new ApplicationRequirementAnswer(
            asked.Agents, UnitWriter.Plain(asked.Requirement.Part), write.Of(asked.Requirement.Earliest), write.Of(asked.Requirement.Latest), asked.Source))],
        [.. DefaultLoads.For(one.Application).Select(row => new ApplicationLoadAnswer(
            row.Load.Name, UnitWriter.Plain(row.Load.Acceleration), row.Load.Direction is { } way ? [way.X, way.Y, way.Z] : null, row.Source))],
        [.. UsualRule.Of(one.Application).Select(usual => new ApplicationRuleAnswer(usual.Rule.Name, usual.Rule.Months, usual.Source))],
        one.Sources);
}

using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Requests;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Upkeep;

namespace FlowCalc.Api.Upkeep;

/// <summary><c>POST /v1/upkeep</c>: dates, weight and gauge of a layout's bottle on a day that the request gives; as JSON, or as a calendar.</summary>
internal static class UpkeepEndpoint
{
    /// <summary>What a document without a service is told.</summary>
    public const string Missing = "missing: this call answers from service, the bottle's dates, rules, weighing and gauge";

    /// <summary>Puts the call on the service.</summary>
    public static void MapUpkeep(this IEndpointRouteBuilder app) =>
        app.MapPost("/v1/upkeep", AnswerAsync)
            .WithName("Upkeep").WithTags("Flow")
            .WithSummary("Dates and upkeep of a layout's bottle")
            .DescribeUpkeep();

    static Task AnswerAsync(HttpContext context, ServiceLimits limits)
    {
        if (UpkeepQuery.Read(context.Request, out var fault) is not { } query) return ProblemWriter.WriteAsync(context, fault!);
        var options = new LayoutReaderOptions { MaximumPoints = limits.UpkeepPoints, Today = query.Today };
        string[] others = [UpkeepQuery.TodayName, UpkeepQuery.TemperatureName, UpkeepQuery.FormatName];
        if (!query.IsCalendar)
            return LayoutCall.AnswerAsync<UpkeepAnswer>(context, limits, options, limits.UpkeepTime, Json, static (text, answer) => text.Value(answer, AnswerJson.Default.UpkeepAnswer), others: others);
        return LayoutCall.AnswerAsync<byte[]>(context, limits, options, limits.UpkeepTime, Calendar, AnswerWriter.Bytes(context, CalendarFile.ContentType), others);

        UpkeepAnswer? Json(Layout layout, UnitWriter write, out Problem? why, CancellationToken cancel) =>
            Work(layout, query, out why) is { } result ? UpkeepAnswers.Of(layout, result, UpkeepFindings.Judge(layout, result, write.System), write) : null;

        byte[]? Calendar(Layout layout, UnitWriter write, out Problem? why, CancellationToken cancel) =>
            Work(layout, query, out why) is { } result ? CalendarFile.Write(layout, result) : null;
    }

    static UpkeepResult? Work(Layout layout, UpkeepQuery query, out Problem? fault)
    {
        fault = layout.Service is null ? Problems.Unread([new LayoutFault("/service", Missing)]) : null;
        return fault is null ? UpkeepCalculation.Of(layout, query.Today, query.Temperature) : null;
    }
}

using FlowCalc.Api.Answers;
using FlowCalc.Api.Coverage;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Requests;
using FlowCalc.Api.Upkeep;
using FlowCalc.Checks;
using FlowCalc.Coverage;
using FlowCalc.Explanations;
using FlowCalc.Layouts;

namespace FlowCalc.Api.Checks;

/// <summary><c>POST /v1/check</c>: everything that a layout has data for, in one answer with one verdict.</summary>
internal static class CheckEndpoint
{
    /// <summary>Puts the call on the service.</summary>
    public static void MapCheck(this IEndpointRouteBuilder app) =>
        app.MapPost("/v1/check", AnswerAsync)
            .WithName("Check").WithTags("Flow")
            .WithSummary("Everything that a layout has data for")
            .DescribeCheck();

    static Task AnswerAsync(HttpContext context, ServiceLimits limits, CaseThreads threads)
    {
        Problem? fault = null;
        var today = UpkeepQuery.Day(context.Request, isRequired: false, ref fault);
        var temperature = UpkeepQuery.Degrees(context.Request, ref fault);
        if (fault is not null) return ProblemWriter.WriteAsync(context, fault);

        var options = new LayoutReaderOptions { MaximumPoints = limits.CheckPoints, Today = today };
        return LayoutCall.AnswerAsync<CheckAnswer>(
            context, limits, options, limits.CheckTime, Work, static (text, answer) => text.Value(answer, AnswerJson.Default.CheckAnswer), others: [UpkeepQuery.TodayName, UpkeepQuery.TemperatureName]);

        CheckAnswer? Work(Layout layout, UnitWriter write, out Problem? why, CancellationToken cancel)
        {
            var parts = CutListExplainer.Parts(layout);
            why = parts > limits.CheckParts ? Problems.TooMuch($"Its runs, bends, fittings, clips and hot places are {parts} together; this call takes {limits.CheckParts}.") : null;
            if (why is null && LayoutCoverage.Pairs(layout) is var pairs && pairs > limits.CoveragePairs) why = CoverageEndpoint.TooMany(pairs, limits);
            return why is null ? CheckAnswers.Of(LayoutCheck.Of(layout, new(write.System, today, temperature), threads, cancel), write) : null;
        }
    }
}

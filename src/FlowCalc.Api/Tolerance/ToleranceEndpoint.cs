using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Explanations;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Jobs;
using FlowCalc.Api.Requests;
using FlowCalc.Explanations;
using FlowCalc.Layouts;
using FlowCalc.Studies;
using FlowCalc.Studies.Reading;
using FlowCalc.Studies.Tolerance;

namespace FlowCalc.Api.Tolerance;

/// <summary><c>POST /v1/tolerance</c>: how the spread of a layout's inputs spreads its answer, at once or as a job.</summary>
internal static class ToleranceEndpoint
{
    const string Path = "/v1/tolerance", What = "points (those of the layout in every case)";

    /// <summary>Puts the call on the service.</summary>
    public static void MapTolerance(this IEndpointRouteBuilder app) =>
        app.MapPost(Path, AnswerAsync)
            .WithName("Tolerance").WithTags("Studies")
            .WithSummary("Spread of an answer from the spread of its inputs, and which input matters most")
            .DescribeTolerance();

    /// <summary>What a study may ask of a service.</summary>
    public static ToleranceLimits LimitsOf(ServiceLimits limits) => new(limits.ToleranceFlowSamples, limits.ToleranceDischargeSamples, limits.ToleranceNumbers);

    static Task AnswerAsync(HttpContext context, ServiceLimits limits, CaseThreads threads, JobStore jobs)
    {
        return JobCall.IsPreferred(context.Request)
            ? JobCall.HandInAsync<ToleranceQuestion>(context, limits, jobs, limits.ToleranceTime, Read, Job, ToleranceExplainer.Points, What)
            : DocumentCall.AnswerAsync<ToleranceQuestion, ToleranceAnswer>(
                context, limits, limits.ToleranceTime, Read, Work(explains: false), Write, new(Work(explains: true), ToleranceExplainer.Points, What));

        StudyReading<ToleranceQuestion> Read(ReadOnlyMemory<byte> utf8, CancellationToken cancel) =>
            ToleranceReader.Read(utf8, new LayoutReaderOptions { MaximumPoints = limits.DischargePoints }, LimitsOf(limits), cancel);

        DocumentWork<ToleranceQuestion, ToleranceAnswer> Work(bool explains) => (ToleranceQuestion question, UnitWriter write, out Problem? fault, CancellationToken cancel) =>
        {
            fault = null;
            return Answer(question, write, explains, null, cancel);
        };

        IJobWork Job(ToleranceQuestion question, UnitWriter write, bool explains) =>
            new JobWork<ToleranceAnswer>(Path, question.Samples, (progress, cancel) => Answer(question, write, explains, progress, cancel), Write);

        ToleranceAnswer Answer(ToleranceQuestion question, UnitWriter write, bool explains, IProgress<int>? progress, CancellationToken cancel)
        {
            var result = ToleranceStudy.Run(question, threads, progress, cancel);
            var answer = ToleranceAnswers.Of(question, result, write);
            return explains ? answer with { Explanation = ExplanationAnswers.Of(ToleranceExplainer.Of(question, result, cancel), write) } : answer;
        }
    }

    static void Write(JsonText text, ToleranceAnswer answer) => text.Value(answer, AnswerJson.Default.ToleranceAnswer);
}

using System.Globalization;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Jobs;

/// <summary>Writes jobs; the answer goes in as the bytes that it is.</summary>
internal static class JobAnswers
{
    /// <summary>Writes a job with all that came of it, a <see cref="JobAnswer"/>.</summary>
    public static void Write(JsonText text, Job job)
    {
        var outcome = job.Outcome;
        text.Write("{\"id\":"u8, job.Id);
        text.Write(",\"call\":"u8, job.Call);
        text.Write(",\"state\":"u8, Word(outcome.State));
        text.Write(",\"done\":"u8, Done(job, outcome));
        text.Write(",\"of\":"u8, job.Steps);
        text.Write(",\"keptUntil\":"u8, outcome.KeptUntil?.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture));
        text.Raw(",\"problem\":"u8);
        if (outcome.Problem is { } problem) text.Value(problem, AnswerJson.Default.Problem);
        else text.Raw("null"u8);
        text.Raw(",\"answer\":"u8);
        text.Raw(outcome.Answer ?? "null"u8);
        text.Raw("}"u8);
    }

    /// <summary>How far a job has come, as an event tells it.</summary>
    public static string Progress(Job job)
    {
        var outcome = job.Outcome;
        return string.Create(CultureInfo.InvariantCulture, $"{{\"state\":\"{Word(outcome.State)}\",\"done\":{Done(job, outcome)},\"of\":{job.Steps}}}");
    }

    /// <summary>The word for a state.</summary>
    public static string Word(JobState state) => state switch
    {
        JobState.Queued => "queued",
        JobState.Running => "running",
        JobState.Done => "done",
        JobState.Failed => "failed",
        JobState.Cancelled => "cancelled",
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "Not a state."),
    };

    static int Done(Job job, JobOutcome outcome) => outcome.State == JobState.Done ? job.Steps : job.Done;
}

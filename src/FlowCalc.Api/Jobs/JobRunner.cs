using System.Diagnostics;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;

namespace FlowCalc.Api.Jobs;

/// <summary>Does the work of a job, within its time, and turns whatever comes of it into an outcome.</summary>
internal sealed partial class JobRunner(ServiceLimits limits, ILogger log)
{
    /// <summary>Does the work on the thread that calls; throws nothing.</summary>
    public JobOutcome Run(Job job, IJobWork work)
    {
        using var time = new CancellationTokenSource(limits.JobTime);
        try
        {
            using var either = CancellationTokenSource.CreateLinkedTokenSource(time.Token, job.Stopped);
            return new(JobState.Done, work.Run(job, either.Token), null, null);
        }
        catch (OperationCanceledException)
        {
            return time.IsCancellationRequested && !job.Stopped.IsCancellationRequested
                ? new(JobState.Failed, null, Problems.TooSlow(limits.JobTime), null)
                : new(JobState.Cancelled, null, null, null);
        }
        catch (NotFiniteException notFinite)
        {
            return new(JobState.Failed, null, Problems.NoAnswer(notFinite.Message), null);
        }
        // A job has no caller to throw to: what nobody foresaw goes to the log, and the job says that it failed.
        catch (Exception unforeseen)
        {
            var trace = ActivityTraceId.CreateRandom().ToHexString();
            LogUnforeseen(log, trace, job.Call, unforeseen);
            return new(JobState.Failed, null, Problems.UnforeseenOfJob(trace), null);
        }
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "The job {Trace} of {Call} ended with an unforeseen error.")]
    static partial void LogUnforeseen(ILogger log, string trace, string call, Exception thrown);
}

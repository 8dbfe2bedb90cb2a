using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;

namespace FlowCalc.Api.Jobs;

/// <summary>The progress of a job as server-sent events: <c>progress</c> while it moves, then one named after its end.</summary>
internal static class JobEvents
{
    /// <summary>Most callers that listen to one job at once.</summary>
    public const int MostListeners = 16;

    static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(200);

    // A line that says nothing keeps what lies between from taking a quiet stream for a dead one.
    static readonly TimeSpan Silence = TimeSpan.FromSeconds(15);

    /// <summary>The events of a job, for a listener that it has taken.</summary>
    public static async IAsyncEnumerable<SseItem<string>> Of(Job job, TimeProvider clock, [EnumeratorCancellation] CancellationToken cancel)
    {
        try
        {
            var (last, since) = ("", clock.GetTimestamp());
            while (!job.Ended.IsCompleted)
            {
                var now = JobAnswers.Progress(job);
                if (now != last || clock.GetElapsedTime(since) >= Silence)
                {
                    (last, since) = (now, clock.GetTimestamp());
                    yield return new SseItem<string>(now, "progress");
                }
                await Task.WhenAny(job.Ended, Task.Delay(Pause, clock, cancel));
                cancel.ThrowIfCancellationRequested();
            }
            yield return new SseItem<string>(JobAnswers.Progress(job), JobAnswers.Word(job.Outcome.State));
        }
        finally
        {
            job.Leave();
        }
    }
}

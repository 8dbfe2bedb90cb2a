using FlowCalc.Api.Answers;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Jobs;
using FlowCalc.Api.Tests.Hosting;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Abstractions;

namespace FlowCalc.Api.Tests.Jobs;

public sealed class JobStoreTests : IDisposable
{
    static readonly ServiceLimits Limits = new() { JobsRunning = 1, JobsWaiting = 1, JobsKept = 2, JobKept = TimeSpan.FromMinutes(5) };

    readonly ManualClock clock = new();
    readonly JobStore store;

    public JobStoreTests() => store = new JobStore(Limits, clock, NullLogger<JobStore>.Instance);

    public void Dispose() => store.Dispose();

    [Fact]
    public async Task Job_runs_and_keeps_its_answer()
    {
        using var work = new HeldWork("[1]");

        var job = Submit(work);
        await Soon(work.Begun.Task);

        Assert.Equal((JobState.Running, 4, 10), (job.Outcome.State, job.Done, job.Steps));
        Assert.Equal(32, job.Id.Length);
        work.Release();
        await Soon(job.Ended);
        Assert.Equal(JobState.Done, job.Outcome.State);
        Assert.Equal("[1]"u8.ToArray(), job.Outcome.Answer);
        Assert.Equal(clock.GetUtcNow() + Limits.JobKept, job.Outcome.KeptUntil);
        Assert.Same(job, store.Find(job.Id));
        Assert.Null(store.Find(job.Id[1..] + "0"));
    }

    [Fact]
    public async Task Jobs_beyond_those_that_run_wait_and_beyond_those_that_wait_are_refused()
    {
        using HeldWork first = new(), second = new(), third = new();
        var running = Submit(first);
        var waiting = Submit(second);

        Assert.Null(store.Submit(third, out var refusal));

        Assert.Equal(429, refusal!.Status);
        Assert.Contains("1 jobs run and 1 wait", refusal.Detail, StringComparison.Ordinal);
        Assert.Equal(JobState.Queued, waiting.Outcome.State);
        first.Release();
        await Soon(running.Ended);
        await Soon(second.Begun.Task);
        Assert.Equal(JobState.Running, waiting.Outcome.State);
        Assert.NotNull(Submit(third));
        second.Release();
        await Soon(waiting.Ended);
        third.Release();
    }

    [Fact]
    public async Task Stopped_job_says_so_at_once_and_its_work_notices()
    {
        using HeldWork first = new(), second = new();
        var job = Submit(first);
        await Soon(first.Begun.Task);

        Assert.True(store.Remove(job.Id));

        Assert.Equal(JobState.Cancelled, job.Outcome.State);
        Assert.Same(job, store.Find(job.Id));
        await Soon(first.Noticed.Task);
        var next = Submit(second);
        await Soon(second.Begun.Task);
        second.Release();
        await Soon(next.Ended);
    }

    [Fact]
    public async Task Stopped_job_that_waits_makes_room_and_never_runs()
    {
        using HeldWork first = new(), second = new(), third = new();
        var running = Submit(first);
        var waiting = Submit(second);

        store.Remove(waiting.Id);

        Assert.Equal(JobState.Cancelled, waiting.Outcome.State);
        var next = Submit(third);
        first.Release();
        await Soon(running.Ended);
        await Soon(third.Begun.Task);
        Assert.False(second.Begun.Task.IsCompleted);
        third.Release();
        await Soon(next.Ended);
    }

    [Fact]
    public async Task Job_that_has_ended_is_forgotten_when_asked_or_when_its_time_is_up()
    {
        var (one, other) = (await Ended(), await Ended());

        Assert.True(store.Remove(one.Id));
        Assert.Null(store.Find(one.Id));
        Assert.False(store.Remove(one.Id));
        clock.Turn(Limits.JobKept - TimeSpan.FromSeconds(1));
        Assert.NotNull(store.Find(other.Id));
        clock.Turn(TimeSpan.FromSeconds(1));
        Assert.Null(store.Find(other.Id));
    }

    [Fact]
    public async Task Nobody_need_ask_for_a_job_to_be_forgotten()
    {
        var forgotten = await Weakly();
        clock.Turn(Limits.JobKept);

        clock.Ring();

        // The thread that ran it may hold on to it for a moment.
        for (var tries = 0; tries < 100 && forgotten.IsAlive; tries++)
        {
            GC.Collect();
            await Task.Delay(10, TestContext.Current.CancellationToken);
        }
        Assert.False(forgotten.IsAlive);
    }

    [Fact]
    public async Task Of_too_many_jobs_that_have_ended_the_first_is_forgotten()
    {
        var (one, two, three) = (await Ended(), await Ended(), await Ended());

        Assert.Null(store.Find(one.Id));
        Assert.NotNull(store.Find(two.Id));
        Assert.NotNull(store.Find(three.Id));
    }

    [Fact]
    public async Task Of_too_many_bytes_of_answers_the_first_is_forgotten_and_the_last_never()
    {
        using var narrow = new JobStore(new ServiceLimits { JobBytes = 1024 }, clock, NullLogger<JobStore>.Instance);
        List<Job> jobs = [];
        foreach (var length in (int[])[600, 600, 2_000])
        {
            using var work = new HeldWork(new string(' ', length));
            jobs.Add(narrow.Submit(work, out _)!);
            work.Release();
            await Soon(jobs[^1].Ended);
            Assert.All(jobs[..^1], job => Assert.Null(narrow.Find(job.Id)));
            Assert.NotNull(narrow.Find(jobs[^1].Id));
        }
    }

    [Theory]
    [InlineData(true, 422, "pressure")]
    [InlineData(false, 500, "inside the service")]
    public async Task Job_that_throws_has_failed_and_says_why(bool isForeseen, int status, string message)
    {
        using var work = new HeldWork(thrown: isForeseen ? new NotFiniteException("pressure") : new InvalidOperationException("secret"));
        var job = Submit(work);
        work.Release();
        await Soon(job.Ended);

        Assert.Equal(JobState.Failed, job.Outcome.State);
        Assert.Null(job.Outcome.Answer);
        var problem = job.Outcome.Problem!;
        Assert.Equal(status, problem.Status);
        var said = problem.Detail + string.Concat(problem.Errors?.Values.SelectMany(messages => messages) ?? []);
        Assert.Contains(message, said, StringComparison.Ordinal);
        Assert.DoesNotContain("secret", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Job_that_nobody_foresaw_to_throw_is_logged_under_the_id_that_it_tells()
    {
        using var log = new ErrorLog();
        using var logs = LoggerFactory.Create(logging => logging.AddProvider(log));
        using var logged = new JobStore(Limits, clock, logs.CreateLogger<JobStore>());
        using var work = new HeldWork(thrown: new InvalidOperationException("secret"));
        var job = logged.Submit(work, out _)!;
        work.Release();
        await Soon(job.Ended);

        var trace = job.Outcome.Problem!.Detail.Split(' ')[^1].TrimEnd('.');

        Assert.Equal(32, trace.Length);
        var said = Assert.Single(log.Errors);
        Assert.Contains(trace, said, StringComparison.Ordinal);
        Assert.Contains("secret", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Job_over_its_time_has_failed()
    {
        using var hurried = new JobStore(new ServiceLimits { JobTime = TimeSpan.FromMilliseconds(1) }, clock, NullLogger<JobStore>.Instance);
        using var work = new HeldWork();

        var job = hurried.Submit(work, out _)!;
        await Soon(job.Ended);

        Assert.Equal(JobState.Failed, job.Outcome.State);
        Assert.Contains("0.001 s", Assert.Single(job.Outcome.Problem!.Errors!).Value[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Store_that_stops_stops_its_jobs_and_takes_no_more()
    {
        using HeldWork first = new(), second = new(), third = new();
        var (running, waiting) = (Submit(first), Submit(second));
        await Soon(first.Begun.Task);

        await Soon(store.StopAsync(TestContext.Current.CancellationToken));

        Assert.Equal((JobState.Cancelled, JobState.Cancelled), (running.Outcome.State, waiting.Outcome.State));
        Assert.True(first.Noticed.Task.IsCompleted);
        Assert.False(second.Begun.Task.IsCompleted);
        Assert.Null(store.Submit(third, out var refusal));
        Assert.Equal(503, refusal!.Status);
    }

    [Fact]
    public async Task Listeners_of_a_job_are_bounded_and_make_room_when_they_go()
    {
        var job = await Ended();

        Assert.True(job.TryListen(2));
        Assert.True(job.TryListen(2));
        Assert.False(job.TryListen(2));
        job.Leave();
        Assert.True(job.TryListen(2));
    }

    Job Submit(IJobWork work)
    {
        var job = store.Submit(work, out var refusal);
        Assert.Null(refusal);
        return job!;
    }

    async Task<Job> Ended()
    {
        using var work = new HeldWork();
        // The one before may not have left its place yet, though it has its answer.
        Job? job;
        while ((job = store.Submit(work, out _)) is null) await Task.Delay(5, TestContext.Current.CancellationToken);
        work.Release();
        await Soon(job.Ended);
        return job;
    }

    async Task<WeakReference> Weakly() => new(await Ended());

    static Task Soon(Task task) => task.WaitAsync(TimeSpan.FromSeconds(60), TestContext.Current.CancellationToken);
}

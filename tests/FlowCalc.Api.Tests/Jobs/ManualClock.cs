namespace FlowCalc.Api.Tests.Jobs;

/// <summary>A clock that the test turns; its timers come when it says so.</summary>
sealed class ManualClock : TimeProvider
{
    readonly List<Action> timers = [];
    DateTimeOffset now = new(2030, 1, 2, 3, 4, 5, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => now;

    public void Turn(TimeSpan time) => now += time;

    public void Ring() => timers.ForEach(timer => timer());

    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
    {
        timers.Add(() => callback(state));
        return new Timer();
    }

    sealed class Timer : ITimer
    {
        public bool Change(TimeSpan dueTime, TimeSpan period) => true;

        public void Dispose()
        {
        }

        public ValueTask DisposeAsync() => ValueTask.CompletedTask;
    }
}

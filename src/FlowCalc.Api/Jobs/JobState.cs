namespace FlowCalc.Api.Jobs;

/// <summary>How far a job has come.</summary>
internal enum JobState
{
    /// <summary>It waits for its turn.</summary>
    Queued,

    /// <summary>It is worked on.</summary>
    Running,

    /// <summary>It has its answer.</summary>
    Done,

    /// <summary>It ended without an answer; its problem says why.</summary>
    Failed,

    /// <summary>Somebody, or the end of the service, stopped it.</summary>
    Cancelled,
}

using FlowCalc.Api.Faults;

namespace FlowCalc.Api.Jobs;

/// <summary>How far a job has come, and with what: read as one, so that no state goes with another's answer.</summary>
/// <param name="State">The state.</param>
/// <param name="Answer">The answer, JSON in UTF-8; null without one.</param>
/// <param name="Problem">Why there is none; null before the end or where there is one.</param>
/// <param name="KeptUntil">When it is forgotten; null before the end.</param>
internal sealed record JobOutcome(JobState State, byte[]? Answer, Problem? Problem, DateTimeOffset? KeptUntil)
{
    /// <summary>Whether it has ended.</summary>
    public bool IsOver => State is JobState.Done or JobState.Failed or JobState.Cancelled;
}

using System.ComponentModel.DataAnnotations;
using System.Text.Json;
using FlowCalc.Api.Faults;

namespace FlowCalc.Api.Jobs;

/// <summary>How far a job has come, and what came of it.</summary>
/// <param name="Id">Its name, which nobody can guess: whoever has it may read and stop the job.</param>
/// <param name="Call">The call that it is of.</param>
/// <param name="State">What is so of it.</param>
/// <param name="Done">Steps done, such as samples.</param>
/// <param name="Of">Steps in all.</param>
/// <param name="KeptUntil">When a job that has ended is forgotten, UTC as in RFC 3339; null before.</param>
/// <param name="Problem">Why it failed; null where it did not.</param>
/// <param name="Answer">What the call would have answered at once; null until it is done.</param>
public sealed record JobAnswer(
    string Id,
    string Call,
    [property: AllowedValues("queued", "running", "done", "failed", "cancelled")] string State,
    int Done,
    int Of,
    string? KeptUntil,
    Problem? Problem,
    JsonElement Answer);

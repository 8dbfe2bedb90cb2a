using System.Collections.Immutable;
using System.Text.Json;
using FlowCalc.Quantities;
using FlowCalc.Workbench.Sheets;
using Microsoft.JSInterop;

namespace FlowCalc.Workbench.Desks;

/// <summary>Keeps a desk in the browser's own store, step by step, and brings it back after a reload, a lost connection or a restart of the service.</summary>
/// <param name="script">The page's script.</param>
/// <param name="desk">The desk.</param>
sealed class Keeping(IJSObjectReference script, Desk desk)
{
    const long MostBytes = 16 * 1024 * 1024;

    ImmutableList<History.Step> kept = [];

    /// <summary>Brings back what the browser has kept.</summary>
    /// <returns>Whether there was anything.</returns>
    public async Task<bool> RestoreAsync(CancellationToken cancel)
    {
        await using var stream = await script.InvokeAsync<IJSStreamReference>("kept", cancel);
        await using var bytes = await stream.OpenReadStreamAsync(MostBytes, cancel);
        var record = await ReadAsync(bytes, cancel);
        if (record is not { Steps.Length: > 0 } found || found.At < 0 || found.At >= found.Steps.Length || found.Steps.Any(step => step?.Text is null || step.What is null || step.File is null)) return false;
        var steps = found.Steps.Select(step => new History.Step(step.Text, step.What, step.Field, step.File)).ToImmutableList();
        kept = steps;
        desk.Restore(History.From(steps, found.At), Enum.IsDefined(found.Units) ? found.Units : UnitSystem.Metric);
        return true;
    }

    /// <summary>Keeps what has changed since.</summary>
    /// <exception cref="JSDisconnectedException">The browser has gone.</exception>
    public async Task KeepAsync()
    {
        var (steps, before) = (desk.History.Steps, kept);
        kept = steps;
        var dropped = before.Count == 0 ? 0 : before.FindIndex(step => ReferenceEquals(step, steps[0]));
        var same = 0;
        if (dropped >= 0)
            while (dropped + same < before.Count && same < steps.Count && ReferenceEquals(before[dropped + same], steps[same])) same++;
        var added = steps.Skip(same).Select(step => new KeptStep(step.Text, step.What, step.Field, step.File)).ToArray();
        await script.InvokeVoidAsync("keep", Math.Max(0, dropped), same, added, desk.History.At, (int)desk.Units);
    }

    // What another version, or somebody's hand, has left there is no reason to fail.
    static async Task<KeptDesk?> ReadAsync(Stream bytes, CancellationToken cancel)
    {
        try
        {
            return await JsonSerializer.DeserializeAsync<KeptDesk>(bytes, JsonSerializerOptions.Web, cancel);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    sealed record KeptStep(string Text, string What, string? Field, string File);

    sealed record KeptDesk(KeptStep[] Steps, int At, UnitSystem Units);
}

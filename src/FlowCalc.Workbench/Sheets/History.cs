using System.Collections.Immutable;

namespace FlowCalc.Workbench.Sheets;

/// <summary>The texts of a document one after the other, so that every change can be undone and done again. Changes of one field in a row are one step.</summary>
public sealed record History
{
    /// <summary>Most steps that are kept; beyond, the oldest goes.</summary>
    public const int MostSteps = 100;

    History(ImmutableList<Step> steps, int at) => (Steps, At) = (steps, at);

    /// <summary>The steps, the oldest first.</summary>
    public ImmutableList<Step> Steps { get; }

    /// <summary>Index of the step that holds now.</summary>
    public int At { get; }

    /// <summary>The text that holds now.</summary>
    public string Text => Steps[At].Text;

    /// <summary>Name of the file that the text was opened from or is saved as.</summary>
    public string File => Steps[At].File;

    /// <summary>Whether there is a step to undo.</summary>
    public bool CanUndo => At > 0;

    /// <summary>Whether there is a step to do again.</summary>
    public bool CanRedo => At + 1 < Steps.Count;

    /// <summary>A history that begins with a text.</summary>
    public static History Of(string text, string file) => new([new Step(text, "as opened", null, file)], 0);

    /// <summary>A history of steps that were kept elsewhere.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="at"/> is no index of a step.</exception>
    public static History From(ImmutableList<Step> steps, int at)
    {
        ArgumentNullException.ThrowIfNull(steps);
        ArgumentOutOfRangeException.ThrowIfNegative(at);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(at, steps.Count);
        return new(steps, at);
    }

    /// <summary>After one more change. What had been undone is gone.</summary>
    /// <param name="text">The new text.</param>
    /// <param name="what">What was done, in a few words.</param>
    /// <param name="field">The field that was typed into; null for any other change.</param>
    /// <param name="file">Name of its file where another document takes the place of this one; null for the same file.</param>
    public History With(string text, string what, string? field = null, string? file = null)
    {
        file ??= File;
        if (text == Text && file == File) return this;
        var kept = Steps.GetRange(0, At + 1);
        // The step before stays, so that undoing goes back to what the field held at first.
        if (field is not null && kept[^1].Field == field && At > 0) return new(kept.SetItem(At, new Step(text, what, field, file)), At);
        kept = kept.Add(new Step(text, what, field, file));
        if (kept.Count > MostSteps) kept = kept.RemoveRange(0, kept.Count - MostSteps);
        return new(kept, kept.Count - 1);
    }

    /// <summary>A step back.</summary>
    /// <exception cref="InvalidOperationException">There is none.</exception>
    public History Undone() => CanUndo ? new(Steps, At - 1) : throw new InvalidOperationException("There is nothing to undo.");

    /// <summary>A step forward again.</summary>
    /// <exception cref="InvalidOperationException">There is none.</exception>
    public History Redone() => CanRedo ? new(Steps, At + 1) : throw new InvalidOperationException("There is nothing to do again.");

    /// <summary>A text on the way, and what made it.</summary>
    /// <param name="Text">The text.</param>
    /// <param name="What">What was done, in a few words.</param>
    /// <param name="Field">The field that was typed into; null for any other change.</param>
    /// <param name="File">Name of the file that the text was opened from or is saved as.</param>
    public sealed record Step(string Text, string What, string? Field, string File);
}

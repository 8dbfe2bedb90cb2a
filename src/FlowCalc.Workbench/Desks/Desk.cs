using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using FlowCalc.Findings;
using FlowCalc.Layouts.Editing;
using FlowCalc.Quantities;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Sheets;
using FlowCalc.Workbench.Solving;
using Microsoft.Extensions.Logging;

namespace FlowCalc.Workbench.Desks;

/// <summary>What one open page works on: the document with its history, what is chosen, and the answers. Everything that matters of it is kept in the browser.</summary>
/// <remarks>Used on the page's own dispatcher alone; answers are worked out elsewhere and handed back to it.</remarks>
public sealed class Desk(WorkPlaces places, ILogger<Desk> log) : IDisposable
{
    const string FirstFile = "layout.json";

    readonly Answers answers = new(places, log);

    /// <summary>The document now.</summary>
    public Sheet Sheet { get; private set; } = Sheet.Of(EmptySheet.Text);

    /// <summary>Its history.</summary>
    public History History { get; private set; } = History.Of(EmptySheet.Text, FirstFile);

    /// <summary>Name of the file that it was opened from or is saved as.</summary>
    public string FileName => History.File;

    /// <summary>The same without its ending, for files that are made of the document.</summary>
    public string FileStem => Path.GetFileNameWithoutExtension(FileName);

    /// <summary>Path of the point or run that is chosen; null for none.</summary>
    public string? Chosen { get; private set; }

    /// <summary>The system of units that answers are shown in.</summary>
    public UnitSystem Units { get; private set; }

    /// <summary>The same as calls of the service take it.</summary>
    public string UnitsWord => Units.ToString().ToLowerInvariant();

    /// <summary>Something to tell once, such as why a change was not made; null for nothing.</summary>
    public string? Notice { get; private set; }

    /// <summary>The answer of the last document without faults; null before the first.</summary>
    public SolvedLayout? Solved => answers.Solved;

    /// <summary>Why there is no answer to the document now although it has no faults; null where there is one.</summary>
    public string? Failure => answers.Failure;

    /// <summary>Whether <see cref="Solved"/> belongs to the document as it is now.</summary>
    public bool IsFresh => Sheet.Layout is { } layout && ReferenceEquals(Solved?.Layout, layout);

    /// <summary>Whether the document has no faults and its answer is on its way.</summary>
    public bool IsWaiting => Sheet.Layout is not null && !IsFresh && Failure is null;

    /// <summary>Whether a discharge is being followed, or about to be.</summary>
    public bool IsDischarging => answers.IsDischarging;

    /// <summary>Numbers as this page shows them.</summary>
    public Shown Shown => new(Units, (Solved?.Layout ?? Sheet.Layout)?.AmbientPressure ?? UnitsNet.Pressure.FromAtmospheres(1));

    /// <summary>Raised after every change, of the document, the choice or an answer.</summary>
    public event Action? Changed
    {
        add => answers.Changed += value;
        remove => answers.Changed -= value;
    }

    /// <summary>Raised after a change of the document, so that it is kept.</summary>
    public event Action? Edited;

    /// <summary>Chosen tool: what pointing at the drawing does.</summary>
    public Tool Tool { get; private set; }

    /// <summary>Puts the first document on the desk; its history begins here.</summary>
    public void Open(string text, string fileName = FirstFile)
    {
        (History, Chosen, Notice) = (History.Of(text, fileName), null, null);
        Take(Sheet.Of(text));
    }

    /// <summary>Puts another document in place of the one on the desk, as a step that can be undone.</summary>
    /// <param name="text">The document.</param>
    /// <param name="what">What is done, in a few words.</param>
    /// <param name="fileName">Name of its file.</param>
    /// <param name="field">Where it was chosen, so that looking through a list is one step; null for a step of its own.</param>
    public void Exchange(string text, string what, string fileName = FirstFile, string? field = null)
    {
        Chosen = null;
        // What was found of another document says nothing of this one.
        answers.Forget();
        (History, Notice) = (History.With(text, what, field, fileName), null);
        Take(Sheet.Of(text));
    }

    /// <summary>Puts a document with its history back, as it was kept.</summary>
    public void Restore(History history, UnitSystem units)
    {
        (History, Units, Chosen, Notice) = (history, units, null, null);
        Take(Sheet.Of(history.Text));
    }

    /// <summary>Replaces the whole text as one step.</summary>
    public void Replace(string text, string what, string? field = null) => Take(Sheet.Of(text), what, field);

    /// <summary>Sets what stands at a place; nothing takes it away.</summary>
    /// <param name="pointer">JSON pointer of the place.</param>
    /// <param name="value">The value; null for nothing.</param>
    public void Set(string pointer, JsonNode? value) => Edit($"changed {pointer}", root => JsonPlace.Set(root, pointer, value), pointer);

    /// <summary>Changes the document as one step.</summary>
    /// <param name="what">What is done, in a few words.</param>
    /// <param name="change">Changes the parts.</param>
    /// <param name="field">The field that was typed into; null for any other change.</param>
    public void Edit(string what, Action<JsonObject> change, string? field = null) => TryEdit(what, root =>
    {
        change(root);
        return null;
    }, field: field);

    /// <summary>Changes the document as one step, unless that cannot be done: then why is told, and there is no step.</summary>
    /// <param name="what">What is done, in a few words.</param>
    /// <param name="change">Changes the parts of a copy; says why it cannot, null where it did.</param>
    /// <param name="refuses">Looks at what came of it and says why it may not be; null for nothing.</param>
    /// <param name="field">The field that was typed into; null for any other change.</param>
    /// <returns>Whether it was done.</returns>
    public bool TryEdit(string what, Func<JsonObject, string?> change, Func<Sheet, string?>? refuses = null, string? field = null)
    {
        string? why = null;
        if (!Sheet.HasParts) why = "The text is no JSON object with each name once; mend it under Text first.";
        else
        {
            try
            {
                var sheet = Sheet.With(root => why = change(root));
                why ??= refuses?.Invoke(sheet);
                if (why is null) Take(sheet, what, field);
            }
            catch (InvalidOperationException)
            {
                // A document with faults may hold a single value, or a list, where the parts of the page look for names.
                why = "The document holds something else on the way to that place; mend it under Text.";
            }
        }
        if (why is not null) Tell(why);
        return why is null;
    }

    /// <summary>Makes the changes of a cure.</summary>
    public void Apply(Cure cure)
    {
        ArgumentNullException.ThrowIfNull(cure);
        ImmutableArray<DocumentChange> changes = [.. cure.Changes.Select(change => new DocumentChange(change.Path, change.To is { } to ? JsonElement.Parse(to.Json) : default))];
        var edited = DocumentEdit.Apply(Encoding.UTF8.GetBytes(Sheet.Text), changes);
        if (edited.Faults is [var fault, ..]) Tell(fault.Message);
        else Take(Sheet.Of(SheetText.Write(JsonNode.Parse(edited.Utf8.Span)!.AsObject())), "made the change offered", null);
    }

    /// <summary>A step back.</summary>
    public void Undo() => Go(History.Undone());

    /// <summary>A step forward again.</summary>
    public void Redo() => Go(History.Redone());

    /// <summary>Chooses a point or run; null for none.</summary>
    public void Choose(string? path)
    {
        (Chosen, Notice) = (path, null);
        answers.Raise();
    }

    /// <summary>Takes a tool.</summary>
    public void Take(Tool tool)
    {
        (Tool, Notice) = (tool, null);
        answers.Raise();
    }

    /// <summary>Shows answers in other units.</summary>
    public void Show(UnitSystem units)
    {
        Units = units;
        answers.Work(Sheet.Layout, units);
        Edited?.Invoke();
    }

    /// <summary>Tells something until the next change.</summary>
    public void Tell(string notice)
    {
        Notice = notice;
        answers.Raise();
    }

    /// <inheritdoc />
    public void Dispose() => answers.Dispose();

    void Go(History history)
    {
        (History, Notice) = (history, null);
        Take(Sheet.Of(history.Text));
    }

    void Take(Sheet sheet, string what, string? field)
    {
        (History, Notice) = (History.With(sheet.Text, what, field), null);
        Take(sheet);
    }

    void Take(Sheet sheet)
    {
        Sheet = sheet;
        answers.Work(sheet.Layout, Units);
        Edited?.Invoke();
    }
}

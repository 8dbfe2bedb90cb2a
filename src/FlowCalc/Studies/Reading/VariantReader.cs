using System.Collections.Immutable;
using System.Text.Json;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Editing;
using FlowCalc.Layouts.Reading;
using FlowCalc.Studies.Comparing;

namespace FlowCalc.Studies.Reading;

/// <summary>Reads variants of a layout: changes of it by id, or whole documents.</summary>
/// <param name="given">The layout that they change; null where the request has none.</param>
/// <param name="layouts">Limits on each layout.</param>
sealed class VariantReader(NestedLayout? given, LayoutReaderOptions layouts)
{
    const int MostChanges = 1_000;

    /// <summary>Reads one; null where it logged faults, or where there is nothing to change.</summary>
    public Variant? Read(ReadingContext context, JsonValue element, HashSet<string> names)
    {
        context.Cancellation.ThrowIfCancellationRequested();
        if (!CompareFields.Variant.TryRead(context, element, out var members)) return null;
        TextValue.Read(context, members[VariantField.Note], "a note");
        members.Requires(context, VariantField.Name, "the variant's name");
        var name = TextValue.Name(context, members[VariantField.Name], "a variant's name");
        if (name is not null && !names.Add(name)) context.Faults.Add(members[VariantField.Name], $"read {Said.Name(name)}: another layout of the comparison has that name already");
        if (members.Has(VariantField.Layout) && members.Has(VariantField.Set))
        {
            context.Faults.Add(element, "read both set and layout: a variant either sets something in the base or is a layout of its own");
            return null;
        }
        if (members.Has(VariantField.Layout))
            return NestedLayout.Read(context, members[VariantField.Layout], layouts).Layout is { } whole && name is not null ? new Variant(name, whole, []) : null;
        if (!members.Requires(context, VariantField.Set, "what it sets, such as { \"runs/R1/tube\": \"feed\" }, or a whole layout")) return null;
        return Changed(context, members[VariantField.Set]) is var (layout, changes) && name is not null ? new Variant(name, layout, changes) : null;
    }

    (Layout Layout, ImmutableArray<DocumentChange> Changes)? Changed(ReadingContext context, JsonValue set)
    {
        if (set.ValueKind is not JsonValueKind.Object || set.GetArrayLength() is var count && (count == 0 || count > MostChanges))
        {
            var read = set.ValueKind is JsonValueKind.Object ? $"{set.GetArrayLength()} changes" : Said.Value(set);
            context.Faults.Add(set, $"read {read}: an object of 1 to {MostChanges} changes by path is right, such as {{ \"runs/R1/tube\": \"feed\" }}");
            return null;
        }
        var (changes, values) = Changes(context, set);
        if (given?.Layout is null) return null;

        var edited = DocumentEdit.Apply(given.Utf8, changes, context.Cancellation);
        foreach (var fault in edited.Faults) context.Faults.Add(values[fault.Change], fault.Message);
        var reading = LayoutReader.Read(edited.Utf8, layouts, context.Cancellation);
        var isWhole = edited.Faults.IsEmpty && changes.Length == set.GetArrayLength();
        foreach (var fault in reading.Faults) Tell(context, set, values, edited, fault, isWhole);
        return isWhole && reading.Layout is { } layout ? (layout, changes) : null;
    }

    static (ImmutableArray<DocumentChange> Changes, List<JsonValue> Values) Changes(ReadingContext context, JsonValue set)
    {
        var changes = ImmutableArray.CreateBuilder<DocumentChange>();
        List<JsonValue> values = [];
        HashSet<string> paths = new(StringComparer.Ordinal);
        foreach (var member in set.EnumerateObject())
        {
            if (RawText.Decode(member.RawName) is not { } path) context.Faults.Add(member.Value, "its path holds half of a surrogate pair, which stands for no character");
            else if (!paths.Add(path)) context.Faults.Add(member.Value, $"repeated: {Said.Name(path)} is set already");
            else if (ValueOf(context, member.Value) is { } value)
            {
                changes.Add(new DocumentChange(path, value));
                values.Add(member.Value);
            }
            else context.Faults.Add(member.Value, $"read {Said.Value(member.Value)}: an object in it has a name twice, or an escape in it is half of a surrogate pair, which stands for no character");
        }
        return (changes.DrainToImmutable(), values);
    }

    static JsonElement? ValueOf(ReadingContext context, JsonValue element)
    {
        try
        {
            using var value = JsonDocument.Parse(
                NestedLayout.TextOf(context, element), new JsonDocumentOptions { MaxDepth = context.Options.MaximumDepth, AllowDuplicateProperties = false });
            using var writer = new Utf8JsonWriter(Stream.Null);
            value.WriteTo(writer);
            return value.RootElement.Clone();
        }
        catch (Exception cannotStand) when (cannotStand is JsonException or InvalidOperationException)
        {
            // The request was parsed, so that one of the two things which the caller states is all that can be wrong: the first is a JsonException, the second shows in writing.
            return null;
        }
    }

    // A fault of the changed layout stands at the change whose place holds it; one that no change holds came of them all, or of a change that could not be made.
    static void Tell(ReadingContext context, JsonValue set, List<JsonValue> values, EditedDocument edited, LayoutFault fault, bool isWhole)
    {
        var at = set;
        var longest = -1;
        for (var i = 0; i < values.Count; i++)
        {
            if (edited.Pointers[i] is not { } pointer || pointer.Length <= longest || !Holds(pointer, fault.Pointer)) continue;
            (at, longest) = (values[i], pointer.Length);
        }
        if (longest < 0 && !isWhole) return;
        var place = fault.Pointer.Length == longest ? "" : $"in the changed layout, at {(fault.Pointer.Length == 0 ? "its root" : Said.Plain(fault.Pointer))}: ";
        context.Faults.Add(at, place + fault.Message);
    }

    static bool Holds(string pointer, string inner) => inner.StartsWith(pointer, StringComparison.Ordinal) && (inner.Length == pointer.Length || inner[pointer.Length] == '/');
}

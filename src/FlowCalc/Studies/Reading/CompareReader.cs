using System.Collections.Immutable;
using System.Text.Json;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;
using FlowCalc.Studies.Comparing;

namespace FlowCalc.Studies.Reading;

/// <summary>Reads the request of a comparison: a layout document and variants of it, every fault at once.</summary>
public static class CompareReader
{
    /// <summary>The base's name where the request gives none.</summary>
    public const string BaseName = "base";

    /// <summary>Reads a request.</summary>
    /// <param name="utf8">JSON in UTF-8.</param>
    /// <param name="layouts">Limits on each layout.</param>
    /// <param name="mostVariants">Most variants, 1 or more.</param>
    /// <param name="cancellationToken">Ends the reading early.</param>
    /// <returns>The request, or every fault in it; a fault of a changed layout stands at the change that brought it, where there is one.</returns>
    /// <exception cref="JsonException">The text is not JSON in UTF-8, or nested too deep.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A limit is outside its range.</exception>
    /// <exception cref="OperationCanceledException">The reading was ended early.</exception>
    public static StudyReading<CompareRequest> Read(ReadOnlyMemory<byte> utf8, LayoutReaderOptions layouts, int mostVariants, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(layouts);
        ArgumentOutOfRangeException.ThrowIfLessThan(mostVariants, 1);
        return StudyText.Read(utf8, layouts, (context, root) => Request(context, root, layouts, mostVariants), cancellationToken);
    }

    static CompareRequest? Request(ReadingContext context, JsonValue root, LayoutReaderOptions layouts, int mostVariants)
    {
        if (!CompareFields.Comparison.TryRead(context, root, out var members)) return null;
        TextValue.Read(context, members[CompareField.Note], "a note");
        var name = TextValue.Name(context, members[CompareField.Name], "the base's name") ?? BaseName;
        NestedLayout? given = null;
        if (members.Requires(context, CompareField.Layout, "the layout document that the variants change"))
            given = NestedLayout.Read(context, members[CompareField.Layout], layouts);
        if (!members.Requires(context, CompareField.Variants, Right(mostVariants))) return null;
        var variants = Variants(context, members[CompareField.Variants], name, new VariantReader(given, layouts), mostVariants);
        return context.Faults.IsEmpty ? new CompareRequest(new Variant(name, given!.Layout!, []), variants) : null;
    }

    static ImmutableArray<Variant> Variants(ReadingContext context, JsonValue element, string baseName, VariantReader reader, int most)
    {
        if (element.ValueKind is not JsonValueKind.Array || element.GetArrayLength() is var count && (count == 0 || count > most))
        {
            var read = Said.Entries(element);
            context.Faults.Add(element, $"read {read}: {Right(most)} is right");
            return [];
        }
        var variants = ImmutableArray.CreateBuilder<Variant>(count);
        HashSet<string> names = new(StringComparer.Ordinal) { baseName };
        foreach (var entry in element.EnumerateArray())
            if (reader.Read(context, entry, names) is { } variant) variants.Add(variant);
        return variants.DrainToImmutable();
    }

    static string Right(int most) => $"an array of 1 to {most} variants, each with a name and what it sets";
}

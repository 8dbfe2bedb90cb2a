using System.Collections.Immutable;
using System.Text.Json;
using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of the cutting.</summary>
enum CuttingField
{
    Stock,
    Kerf,
    Squaring,
    Spare,
    BenderGrip,
    ClipSpacing,
    Insertion,
    Note,
}

/// <summary>The members of a stock.</summary>
enum StockField
{
    Tube,
    Lengths,
    Coil,
    Note,
}

/// <summary>Reads how tube is cut, bent and clipped.</summary>
static class CuttingReader
{
    /// <summary>Most lengths of one stock.</summary>
    public const int MostLengths = 20;

    /// <summary>The cutting; null where it is missing or none.</summary>
    /// <param name="context">The reading.</param>
    /// <param name="element">The cutting.</param>
    /// <param name="own">The document's tubes.</param>
    public static Cutting? Read(ReadingContext context, JsonValue element, NamedEntries<Tube> own)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.Cutting.TryRead(context, element, out var members)) return null;
        TextValue.Read(context, members[CuttingField.Note], "a note");
        var spare = NumberValue.Read(context, members[CuttingField.Spare], Sizes.Spare);
        return new Cutting
        {
            Stock = Stocks(context, members[CuttingField.Stock], own),
            Kerf = LengthValue.Read(context, members[CuttingField.Kerf], Sizes.Kerf),
            Squaring = LengthValue.Read(context, members[CuttingField.Squaring], Sizes.Squaring),
            Spare = double.IsFinite(spare) ? spare : null,
            BenderGrip = LengthValue.Read(context, members[CuttingField.BenderGrip], Sizes.Grip),
            ClipSpacing = LengthValue.Read(context, members[CuttingField.ClipSpacing], Sizes.ClipSpacing),
            Insertion = LengthValue.Read(context, members[CuttingField.Insertion], Sizes.Insertion),
        };
    }

    static ImmutableArray<TubeStock> Stocks(ReadingContext context, JsonValue element, NamedEntries<Tube> own)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return [];
        if (element.ValueKind is not JsonValueKind.Array)
        {
            context.Faults.Add(element, $"read {Said.Value(element)}: stock is an array of objects with lengths or coil and, where it is of one tube alone, tube");
            return [];
        }
        var stocks = ImmutableArray.CreateBuilder<TubeStock>();
        HashSet<string> named = new(StringComparer.Ordinal);
        var passes = 0;
        foreach (var entry in element.EnumerateArray())
        {
            context.Pass(passes++);
            if (!LayoutFields.Stock.TryRead(context, entry, out var members)) continue;
            TextValue.Read(context, members[StockField.Note], "a note");
            var tube = TubeName(context, members[StockField.Tube], own);
            if (!named.Add(tube ?? ""))
                context.Faults.Add(entry, tube is null ? "read a second stock without tube: at most one is for every tube without its own" : $"{Said.Name(tube)} has a stock already");
            if (Lengths(context, members) is { Length: > 0 } lengths) stocks.Add(new TubeStock(tube, lengths, members.Has(StockField.Coil)));
        }
        return stocks.DrainToImmutable();
    }

    static string? TubeName(ReadingContext context, JsonValue element, NamedEntries<Tube> own)
    {
        var name = TextValue.Name(context, element, "a tube's name");
        if (name is not null && !own.IsBroken && !own.TryFind(name, out _) && TubeCatalogue.Find(name) is null)
            context.Faults.Add(element, $"read {Said.Name(name)}: no tube of the document or the catalogue{NearNames.Advice(context, name, own.Names, RunTubes.CatalogueIds)}");
        return name;
    }

    static ImmutableArray<Length> Lengths(ReadingContext context, in Members<StockField> members)
    {
        const string right = "a stock has lengths, those of its bars, or coil, the length of one";
        var (lengths, coil) = (members[StockField.Lengths], members[StockField.Coil]);
        if (members.Has(StockField.Coil))
        {
            members.Refuses(context, StockField.Lengths, right);
            return LengthValue.Read(context, coil, Sizes.StockLength) is { } one ? [one] : [];
        }
        if (!members.Requires(context, StockField.Lengths, right)) return [];
        if (lengths.ValueKind is not JsonValueKind.Array || lengths.GetArrayLength() is < 1 or > MostLengths)
        {
            context.Faults.Add(lengths, $"read {Said.Entries(lengths)}: lengths are an array of 1 to {MostLengths}, such as [\"2 m\", \"3 m\"]");
            return [];
        }
        return LengthValue.ReadAll(context, lengths, Sizes.StockLength);
    }
}

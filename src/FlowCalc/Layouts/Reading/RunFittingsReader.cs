using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using FlowCalc.Losses;
using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of a fitting in its place.</summary>
enum PlacedFittingField
{
    Fitting,
    At,
    Count,
    Note,
}

/// <summary>Reads the fittings of a run.</summary>
static class RunFittingsReader
{
    const string Right = "a fitting is an id of the catalogue, a name of fittings, an object with kind, or an object with fitting, at and count";

    static readonly ImmutableArray<string> CatalogueIds = [.. FittingCatalogue.All.Select(one => one.Id)];

    /// <summary>The fittings that could be read.</summary>
    /// <param name="context">The reading.</param>
    /// <param name="element">The run's fittings.</param>
    /// <param name="run">Index of the run.</param>
    /// <param name="length">Developed length of the run, m; NaN where it is not known.</param>
    /// <param name="tube">The run's tube; null where it is not known.</param>
    /// <param name="own">The document's fittings.</param>
    public static ImmutableArray<PlacedFitting> Read(ReadingContext context, JsonValue element, int run, double length, Tube? tube, NamedEntries<Fitting> own)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return [];
        if (element.ValueKind is not JsonValueKind.Array)
        {
            context.Faults.Add(element, $"read {Said.Value(element)}: fittings are an array, where {Right}");
            return [];
        }
        var fittings = ImmutableArray.CreateBuilder<PlacedFitting>(element.GetArrayLength());
        var (passes, together) = (0, 0.0);
        foreach (var entry in element.EnumerateArray())
        {
            context.Pass(passes++);
            if (One(context, entry, length, tube, own) is not { } fitting) continue;
            together += (fitting.Fitting.Length?.Meters ?? 0) * fitting.Count;
            Assume(context, fitting.Fitting, run, fittings.Count);
            fittings.Add(fitting);
        }
        FittingChecks.Lengths(context, element, together, length);
        return fittings.DrainToImmutable();
    }

    static PlacedFitting? One(ReadingContext context, JsonValue element, double length, Tube? tube, NamedEntries<Fitting> own)
    {
        if (element.ValueKind is not JsonValueKind.Object || !IsPlaced(element))
            return Fitted(context, element, tube, own) is { } bare ? new PlacedFitting(bare, null, 1) : null;
        if (!LayoutFields.PlacedFitting.TryRead(context, element, out var members)) return null;
        TextValue.Read(context, members[PlacedFittingField.Note], "a note");
        members.Requires(context, PlacedFittingField.Fitting, Right);
        var fitting = Fitted(context, members[PlacedFittingField.Fitting], tube, own);
        var at = QuantityValue.Read(context, members[PlacedFittingField.At], Sizes.FittingPlace);
        var count = NumberValue.Count(context, members[PlacedFittingField.Count]);
        if (at > length * (1 + 1e-9))
            context.Faults.Add(members[PlacedFittingField.At], $"read {QuantityValue.Shown(members[PlacedFittingField.At])}: {Sizes.FittingPlace.What} is along the run's centre line, 0 to {length:0.######} m here");
        return fitting is null ? null : new PlacedFitting(fitting, double.IsFinite(at) ? Length.FromMeters(at) : null, count);
    }

    // An object is a fitting in its place unless it describes one itself.
    static bool IsPlaced(JsonValue element) =>
        element.TryGetProperty("fitting", out _)
        || (!element.TryGetProperty("kind", out _) && (element.TryGetProperty("at", out _) || element.TryGetProperty("count", out _)));

    static Fitting? Fitted(ReadingContext context, JsonValue element, Tube? tube, NamedEntries<Fitting> own)
    {
        var fitting = Named(context, element, own);
        if (fitting is not null && tube is not null) FittingChecks.Roughness(context, element, fitting, tube);
        return fitting;
    }

    static Fitting? Named(ReadingContext context, JsonValue element, NamedEntries<Fitting> own)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return null;
        if (element.ValueKind is JsonValueKind.Object) return FittingReader.Described(context, null, element);
        if (element.ValueKind is not JsonValueKind.String)
        {
            context.Faults.Add(element, $"read {Said.Value(element)}: {Right}");
            return null;
        }
        var name = TextValue.Name(context, element, "a fitting's name");
        if (name is null) return null;
        if (own.TryFind(name, out var fitting)) return fitting;
        if (FittingCatalogue.Find(name) is { } known) return FittingReader.Of(known);
        if (!own.IsBroken) context.Faults.Add(element, $"read {Said.Name(name)}: no fitting of the document or the catalogue{NearNames.Advice(context, name, own.Names, CatalogueIds)}");
        return null;
    }

    static void Assume(ReadingContext context, Fitting fitting, int run, int index)
    {
        // A coefficient that is given stands for what was left out.
        if (fitting is not { LossCoefficient: null, Kv: null }) return;
        if (fitting.Bore is null)
        {
            if (FittingKind.HasMeaning(fitting.Kind))
                context.Assumptions.Add("/runs", run, $"/fittings/{index}", $"{fitting.Kind}: bore as the tube's", "the document gives no bore; a tighter one must be given");
            else
                context.Assumptions.Add("/runs", run, $"/fittings/{index}", "no loss", "the document gives neither lossCoefficient, kv nor bore");
        }
        if (fitting is { Kind: Fitting.Elbow, Angle: { } angle })
            context.Assumptions.Add("/runs", run, $"/fittings/{index}", string.Create(CultureInfo.InvariantCulture,
                $"elbow: K = {Mitre.Coefficient(angle.Radians):0.00} at {angle.Degrees:0.#}°, sharp turn"), "Rennels and Hudson, Pipe Flow, Wiley 2012, ch. 15, mitre (from memory)");
    }
}

using System.Collections.Immutable;
using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>Finds the tube of every run, and keeps the sizes that the document names.</summary>
sealed class RunTubes(NamedEntries<Tube> own)
{
    const string Right = "a run has tube, a name of tubes or an id of the catalogue, or its own bore";

    /// <summary>Ids of the catalogue's tubes.</summary>
    public static readonly ImmutableArray<string> CatalogueIds = [.. TubeCatalogue.All.Select(known => known.Id)];
    readonly Dictionary<string, Tube> ofCatalogue = new(StringComparer.Ordinal);
    readonly List<Tube> used = [];

    /// <summary>The document's own tubes in its order, then those of the catalogue by first use.</summary>
    public ImmutableArray<Tube> Named => [.. own.Entries, .. used];

    /// <summary>The run's tube; null where it is missing or wrong.</summary>
    public Tube? Read(ReadingContext context, in Members<RunField> members, int index)
    {
        if (members.Has(RunField.Tube))
        {
            members.Refuses(context, RunField.Bore, Right);
            members.Refuses(context, RunField.Roughness, "the roughness is the tube's; " + Right);
            return Find(context, members[RunField.Tube]);
        }
        if (!members.Has(RunField.Bore))
        {
            members.Requires(context, RunField.Tube, Right);
            if (members.Has(RunField.Roughness)) TubeRoughness.Read(context, members.Owner, members[RunField.Roughness], double.NaN);
            return null;
        }
        var bore = QuantityValue.Read(context, members[RunField.Bore], Sizes.Bore);
        if (!members.Has(RunField.Roughness)) context.Assumptions.Add("/runs", index, "/roughness", TubeRoughness.UsualWords, TubeRoughness.UsualSource);
        var roughness = TubeRoughness.Read(context, members.Owner, members[RunField.Roughness], bore);
        return double.IsFinite(bore + roughness) ? new Tube { Bore = Length.FromMeters(bore), Roughness = Length.FromMeters(roughness) } : null;
    }

    Tube? Find(ReadingContext context, JsonValue element)
    {
        var name = TextValue.Name(context, element, "a tube's name");
        if (name is null) return null;
        if (own.TryFind(name, out var tube) || ofCatalogue.TryGetValue(name, out tube)) return tube;
        if (TubeCatalogue.Find(name) is { } stock)
        {
            tube = TubeReader.Of(stock, context.Ambient);
            ofCatalogue.Add(name, tube);
            used.Add(tube);
            return tube;
        }
        if (!own.IsBroken) context.Faults.Add(element, $"read {Said.Name(name)}: no tube of the document or the catalogue{NearNames.Advice(context, name, own.Names, CatalogueIds)}");
        return null;
    }
}

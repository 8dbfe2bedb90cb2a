using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;
using FlowCalc.Quantities;
using FlowCalc.Stock;
using FlowCalc.Studies.Sizing;
using Length = UnitsNet.Length;

namespace FlowCalc.Studies.Reading;

/// <summary>A stock that was read.</summary>
/// <param name="Tubes">The tubes.</param>
/// <param name="TubeTexts">The JSON of each that is described in the request.</param>
/// <param name="Nozzles">The nozzles.</param>
/// <param name="NozzleTexts">The JSON of each diameter or K-factor.</param>
sealed record StockRead(ImmutableArray<TubeOption> Tubes, ImmutableArray<string?> TubeTexts, ImmutableArray<NozzleOption> Nozzles, ImmutableArray<string?> NozzleTexts);

/// <summary>Reads a stock of tubes and nozzles.</summary>
/// <param name="context">The reading.</param>
/// <param name="layout">The layout; null where it has faults, and then what is named in it is not looked up.</param>
/// <param name="document">The layout's own JSON.</param>
/// <param name="objective">What the tubes have to be priced for; null where it is not known.</param>
/// <param name="most">Most tubes, and most nozzles.</param>
sealed class StockReader(ReadingContext context, Layout? layout, JsonValue document, SizingObjective? objective, int most)
{
    static readonly SizeRange MassPerMetre = new(QuantityKind.Mass, "a mass per metre", 0, 1_000, "over 0 to 1000 kg", IsOpen: true);
    static readonly NumberRange CostPerMetre = new("a cost per metre", 0, 1e9, "0 to 1000000000, in any one currency");
    static readonly ImmutableArray<string> CatalogueIds = [.. TubeCatalogue.All.Select(tube => tube.Id)];

    readonly List<TubeOption> tubes = [];
    readonly List<string?> tubeTexts = [];
    readonly List<NozzleOption> nozzles = [];
    readonly List<string?> nozzleTexts = [];

    /// <summary>The stock; null where it is none at all.</summary>
    public StockRead? Read(JsonValue element)
    {
        if (!SizeFields.Stock.TryRead(context, element, out var members)) return null;
        TextValue.Read(context, members[StockField.Note], "a note");
        var before = context.Faults.Count;
        Each(members[StockField.Tubes], "tubes are an array of names of the document's tubes, ids of the catalogue, or objects with tube and its costPerMetre or massPerMetre", ReadTube);
        Each(members[StockField.Orifices], "orifices are an array of diameters, or of objects with diameter and dischargeCoefficient", ReadOrifice);
        Each(members[StockField.KFactors], "kFactors are an array of K-factors", ReadKFactor);
        Each(members[StockField.Nozzles], "nozzles are an array of names of the document's nozzles", ReadNozzle);
        if (context.Faults.Count == before)
        {
            if (tubes.Count + nozzles.Count == 0) context.Faults.Add(element, "read an empty stock: it has tubes, orifices, kFactors or nozzles to choose from");
            if (tubes.Count > most) context.Faults.Add(members[StockField.Tubes], Many(tubes.Count, "tubes"));
            if (nozzles.Count > most) context.Faults.Add(element, Many(nozzles.Count, "orifices, kFactors and nozzles"));
        }
        return new([.. tubes], [.. tubeTexts], [.. nozzles], [.. nozzleTexts]);
    }

    string Many(int count, string what) => $"read {count} {what}: at most {most} are taken";

    void Each(JsonValue list, string right, Action<JsonValue> read)
    {
        if (list.ValueKind is JsonValueKind.Undefined) return;
        if (list.ValueKind is not JsonValueKind.Array)
        {
            context.Faults.Add(list, $"read {Said.Value(list)}: {right}");
            return;
        }
        var passes = 0;
        foreach (var entry in list.EnumerateArray())
        {
            context.Pass(passes++);
            read(entry);
        }
    }

    void ReadTube(JsonValue entry)
    {
        if (entry.ValueKind is JsonValueKind.String)
        {
            AddTube(entry, Named(entry), null, double.NaN, double.NaN);
            return;
        }
        if (!SizeFields.Tube.TryRead(context, entry, out var members)) return;
        TextValue.Read(context, members[StockTubeField.Note], "a note");
        var cost = NumberValue.Read(context, members[StockTubeField.CostPerMetre], CostPerMetre);
        var mass = QuantityValue.Read(context, members[StockTubeField.MassPerMetre], MassPerMetre);
        if (!members.Requires(context, StockTubeField.Tube, "a name of the document's tubes, an id of the catalogue, or a tube of its own beside its name")) return;
        var element = members[StockTubeField.Tube];
        if (element.ValueKind is not JsonValueKind.Object)
        {
            members.Refuses(context, StockTubeField.Name, "a tube that is named in tube has its name there; name belongs to one that is described");
            AddTube(entry, Named(element), null, cost, mass);
            return;
        }
        members.Requires(context, StockTubeField.Name, "a name for the tube that is described, by which the document will know it");
        var name = TextValue.Name(context, members[StockTubeField.Name], "a tube's name");
        if (name is not null && (TubeCatalogue.Find(name) is not null || layout?.Tubes.Any(tube => tube.Name == name) == true))
            context.Faults.Add(members[StockTubeField.Name], $"read {Said.Name(name)}: the document or the catalogue has a tube of that name already");
        AddTube(entry, TubeReader.Own(context, name ?? "", element), Text(element), cost, mass);
    }

    void AddTube(JsonValue entry, Tube? tube, string? text, double cost, double mass)
    {
        if (tube is null) return;
        if (tubes.Any(other => other.Tube.Name == tube.Name)) context.Faults.Add(entry, $"repeated: {Said.Name(tube.Name ?? "")} is in the stock already");
        double? known = double.IsFinite(mass) ? mass : TubeMass.PerMetre(tube);
        if (objective == SizingObjective.LeastCost && !double.IsFinite(cost)) context.Faults.Add(entry, "its costPerMetre is missing: the least cost needs that of every tube in the stock, { \"tube\": …, \"costPerMetre\": 3.2 }");
        if (objective == SizingObjective.LeastMass && known is null) context.Faults.Add(entry, "its massPerMetre is missing: the least mass needs that of every tube whose outside diameter and metal are not known, { \"tube\": …, \"massPerMetre\": \"0.15 kg\" }");
        tubes.Add(new(tube, double.IsFinite(cost) ? cost : null, known));
        tubeTexts.Add(text);
    }

    Tube? Named(JsonValue element)
    {
        if (TextValue.Name(context, element, "a tube's name") is not { } name) return null;
        if (layout?.Tubes.FirstOrDefault(tube => tube.Name == name) is { } own) return own;
        if (TubeCatalogue.Find(name) is { } known) return TubeReader.Of(known, context.Ambient);
        if (layout is not null)
            context.Faults.Add(element, $"read {Said.Name(name)}: no tube of the document or the catalogue{NearNames.Advice(context, name, [.. layout.Tubes.Select(tube => tube.Name!)], CatalogueIds)}");
        return null;
    }

    void ReadOrifice(JsonValue entry)
    {
        var (diameter, coefficient) = (entry, double.NaN);
        if (entry.ValueKind is JsonValueKind.Object && !entry.TryGetProperty("value", out _))
        {
            if (!SizeFields.Orifice.TryRead(context, entry, out var members)) return;
            TextValue.Read(context, members[StockOrificeField.Note], "a note");
            members.Requires(context, StockOrificeField.Diameter, Sizes.Hole);
            coefficient = NumberValue.Read(context, members[StockOrificeField.DischargeCoefficient], Sizes.DischargeCoefficient);
            diameter = members[StockOrificeField.Diameter];
        }
        var size = QuantityValue.Read(context, diameter, Sizes.Hole);
        if (double.IsFinite(size))
            Add(entry, new NozzleOption { Diameter = Length.FromMeters(size), DischargeCoefficient = double.IsFinite(coefficient) ? coefficient : null }, Text(diameter));
    }

    void ReadKFactor(JsonValue entry)
    {
        var factor = QuantityValue.Read(context, entry, Sizes.KFactor);
        if (double.IsFinite(factor)) Add(entry, new NozzleOption { KFactor = factor }, Text(entry));
    }

    void ReadNozzle(JsonValue entry)
    {
        if (TextValue.Name(context, entry, "a nozzle's name") is not { } name || layout is null) return;
        List<string> names = [];
        if (document.TryGetProperty("nozzles", out var all))
            foreach (var member in all.EnumerateObject())
            {
                if (RawText.Decode(member.RawName) is not { } known) continue;
                names.Add(known);
                if (known != name) continue;
                if (NozzleReader.Own(context, name, member.Value) is { } opening)
                    Add(entry, new NozzleOption { Type = name, KFactor = opening.KFactor, TypeOrifice = opening.Orifice, PressureRange = opening.PressureRange }, null);
                return;
            }
        context.Faults.Add(entry, $"read {Said.Name(name)}: not among the document's nozzles{NearNames.Advice(context, name, names)}");
    }

    void Add(JsonValue entry, NozzleOption option, string? text)
    {
        if (nozzles.Contains(option)) context.Faults.Add(entry, $"repeated: {Said.Value(entry)} is in the stock already");
        nozzles.Add(option);
        nozzleTexts.Add(text);
    }

    string Text(JsonValue element) => Encoding.UTF8.GetString(NestedLayout.TextOf(context, element).Span);
}

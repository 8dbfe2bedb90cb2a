using FlowCalc.Layouts.Reading.Coverage;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads what a point has because it is a nozzle.</summary>
static class NozzlePointReader
{
    const string Right = "a nozzle has one of nozzle (a name of nozzles), kFactor and orifice";

    /// <summary>The nozzle; of no use where the reading has faults.</summary>
    public static Nozzle Read(ReadingContext context, in Members<PointField> members, string id, Place? at, string? note, NamedStock stock)
    {
        var (named, kFactor, orifice) = (members.Has(PointField.Nozzle), members.Has(PointField.KFactor), members.Has(PointField.Orifice));
        if (!named && !kFactor && !orifice) context.Faults.Add(members.Owner, $"read none of nozzle, kFactor and orifice: {Right}");
        if (named) members.Refuses(context, PointField.KFactor, Right);
        if (named || kFactor) members.Refuses(context, PointField.Orifice, Right);

        var type = TextValue.Name(context, members[PointField.Nozzle], "a nozzle's name");
        var opening = named ? Named(context, members[PointField.Nozzle], type, stock.Nozzles) : NozzleReader.Opening(context, members[PointField.KFactor], members[PointField.Orifice]);
        var zone = ZoneReader.Named(context, members[PointField.Zone], stock.Zones);
        var share = NumberValue.Read(context, members[PointField.Share], Sizes.Share);
        var range = NozzleReader.Range(context, members[PointField.PressureRange]);
        var aim = members.Has(PointField.Aim) ? AimReader.Read(context, members, at, stock.Targets) : null;
        var spray = members.Has(PointField.Spray) ? SprayReader.Read(context, members[PointField.Spray]) : null;
        return new Nozzle(id, at, note, opening?.KFactor ?? double.NaN, opening?.Orifice, zone, double.IsFinite(share) ? share : null, range ?? opening?.PressureRange, type) { StatesRange = range is not null, Aim = aim, Spray = spray };
    }

    static NozzleOpening? Named(ReadingContext context, JsonValue element, string? name, NamedEntries<NozzleOpening> nozzles)
    {
        if (name is null) return null;
        if (nozzles.TryFind(name, out var opening)) return opening;
        if (!nozzles.IsBroken) context.Faults.Add(element, $"read {Said.Name(name)}: not among the document's nozzles{NearNames.Advice(context, name, nozzles.Names)}");
        return null;
    }
}

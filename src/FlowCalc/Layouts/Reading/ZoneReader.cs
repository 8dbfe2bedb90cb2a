using System.Text.Json;
using FlowCalc.Layouts.Coverage;
using FlowCalc.Layouts.Reading.Coverage;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of a zone.</summary>
enum ZoneField
{
    Share,
    Occupied,
    Volume,
    AirBottle,
    Temperatures,
    Airflow,
    Openings,
    Protection,
    Hazard,
    Design,
    Leaving,
    Note,
}

/// <summary>Reads zones.</summary>
static class ZoneReader
{
    public static readonly Vocabulary Protections = new("flooding", "local");
    public static readonly Vocabulary Hazards = new("class-A", "class-B", "alcohol", "hydrogen", "metal");

    /// <summary>An entry of the document's zones; null where something is wrong.</summary>
    public static Zone? Own(ReadingContext context, string name, JsonValue element)
    {
        if (!LayoutFields.Zone.TryRead(context, element, out var members)) return null;
        var before = context.Faults.Count;
        var share = NumberValue.Read(context, members[ZoneField.Share], Sizes.Share);
        var occupied = TextValue.Flag(context, members[ZoneField.Occupied], "occupied");
        var note = TextValue.Read(context, members[ZoneField.Note], "a note");
        var volume = QuantityValue.Read(context, members[ZoneField.Volume], Sizes.ZoneVolume);
        var air = AirBottleOf(context, members[ZoneField.AirBottle]);
        var (coldest, hottest) = Temperatures(context, members[ZoneField.Temperatures]);
        var airflow = QuantityValue.Read(context, members[ZoneField.Airflow], Sizes.Airflow);
        var openings = QuantityValue.Read(context, members[ZoneField.Openings], Sizes.Openings);
        var protection = TextValue.Choice(context, members[ZoneField.Protection], Protections);
        var hazard = TextValue.Choice(context, members[ZoneField.Hazard], Hazards);
        var design = NumberValue.Read(context, members[ZoneField.Design], Sizes.Concentration);
        var leaving = QuantityValue.Read(context, members[ZoneField.Leaving], Sizes.Leaving);
        if (!occupied) members.Refuses(context, ZoneField.Leaving, "nobody has to leave a zone that is not occupied: say occupied, or leave it out");
        if (context.Faults.Count > before) return null;
        return new Zone(name, double.IsFinite(share) ? share : null, occupied, note)
        {
            Volume = double.IsFinite(volume) ? Volume.FromCubicMeters(volume) : null,
            AirBottle = air,
            Coldest = coldest,
            Hottest = hottest,
            Airflow = double.IsFinite(airflow) ? VolumeFlow.FromCubicMetersPerSecond(airflow) : null,
            Openings = double.IsFinite(openings) ? Area.FromSquareMeters(openings) : null,
            Protection = protection < 0 ? null : (Protection)protection,
            Hazard = hazard < 0 ? null : (Hazard)hazard,
            Design = double.IsFinite(design) ? design : null,
            Leaving = double.IsFinite(leaving) ? Duration.FromSeconds(leaving) : null,
        };
    }

    /// <summary>The name of a zone, which has to be among the document's; null where it is missing or none.</summary>
    public static string? Named(ReadingContext context, JsonValue element, NamedEntries<Zone> zones)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return null;
        var name = TextValue.Name(context, element, "a zone's name");
        if (name is not null && !zones.IsBroken && !zones.TryFind(name, out _))
            context.Faults.Add(element, $"read {Said.Name(name)}: not among the document's zones{NearNames.Advice(context, name, zones.Names)}");
        return name;
    }

    static (Temperature? Coldest, Temperature? Hottest) Temperatures(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return (null, null);
        const string right = "the coldest and the hottest temperature of the space, such as [\"0 °C\", \"40 °C\"]";
        if (element.ValueKind is not JsonValueKind.Array || element.GetArrayLength() != 2)
        {
            context.Faults.Add(element, $"read {Said.Entries(element)}: {right}");
            return (null, null);
        }
        var (coldest, hottest) = (QuantityValue.Read(context, element[0], Sizes.ZoneTemperature), QuantityValue.Read(context, element[1], Sizes.ZoneTemperature));
        if (hottest < coldest) context.Faults.Add(element, $"read {QuantityValue.Shown(element[0])} and {QuantityValue.Shown(element[1])}, the hottest below the coldest: {right}");
        return double.IsFinite(coldest + hottest) ? (Temperature.FromKelvins(coldest), Temperature.FromKelvins(hottest)) : (null, null);
    }

    static AirBottle? AirBottleOf(ReadingContext context, JsonValue element)
    {
        if (!LayoutFields.AirBottle.TryReadOptional(context, element, out var members)) return null;
        TextValue.Read(context, members[AirBottleField.Note], "a note");
        members.Requires(context, AirBottleField.Volume, Sizes.AirBottleVolume);
        members.Requires(context, AirBottleField.Pressure, "the pressure of its air, such as \"30 bar\"");
        var volume = QuantityValue.Read(context, members[AirBottleField.Volume], Sizes.AirBottleVolume);
        var pressure = PressureValue.Read(context, members[AirBottleField.Pressure]);
        if (pressure < context.Ambient) context.Faults.Add(members[AirBottleField.Pressure], $"read {QuantityValue.Shown(members[AirBottleField.Pressure])}: a bottle of compressed air is not under the ambient pressure of {context.Ambient / 1e5:0.#####} bara");
        return double.IsFinite(volume + pressure) ? new AirBottle(Volume.FromCubicMeters(volume), Pressure.FromPascals(pressure)) : null;
    }
}

using System.Collections.Immutable;
using System.Text.Json;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of a hot place.</summary>
enum HotPlaceField
{
    From,
    To,
    Temperature,
    Sleeved,
    Note,
}

/// <summary>Reads what holds a run and what heats it: clips and hot places.</summary>
static class RunFixingsReader
{
    const double Slack = 1 + 1e-9;

    /// <summary>The places of clips; null where they are missing or none.</summary>
    /// <param name="context">The reading.</param>
    /// <param name="element">The run's clips.</param>
    /// <param name="length">Developed length of the run, m; NaN where it is not known.</param>
    public static ImmutableArray<Length>? Clips(ReadingContext context, JsonValue element, double length)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !IsArray(context, element, "clips are an array of places along the run's centre line, such as [\"0.1 m\", \"0.4 m\"]")) return null;
        var places = LengthValue.ReadAll(context, element, Sizes.ClipPlace);
        var last = 0.0;
        foreach (var place in places)
        {
            if (place.Meters < last) context.Faults.Add(element, $"read {place.Meters:0.######} m after {last:0.######} m: clips stand in their order along the run");
            last = place.Meters;
        }
        if (last > length * Slack) context.Faults.Add(element, $"read {last:0.######} m: {Sizes.ClipPlace.What} is along the run's centre line, 0 to {length:0.######} m here");
        return places;
    }

    /// <summary>The hot places that could be read.</summary>
    /// <param name="context">The reading.</param>
    /// <param name="element">The run's hot places.</param>
    /// <param name="length">Developed length of the run, m; NaN where it is not known.</param>
    public static ImmutableArray<HotPlace> HotPlaces(ReadingContext context, JsonValue element, double length)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !IsArray(context, element, "hot places are an array of objects with from and to")) return [];
        var places = ImmutableArray.CreateBuilder<HotPlace>(element.GetArrayLength());
        foreach (var entry in element.EnumerateArray())
        {
            context.Pass(places.Count);
            if (!LayoutFields.HotPlace.TryRead(context, entry, out var members)) continue;
            members.Requires(context, HotPlaceField.From, "where it begins along the run's centre line");
            members.Requires(context, HotPlaceField.To, "where it ends along the run's centre line");
            TextValue.Read(context, members[HotPlaceField.Note], "a note");
            var from = QuantityValue.Read(context, members[HotPlaceField.From], Sizes.HotPlace);
            var to = QuantityValue.Read(context, members[HotPlaceField.To], Sizes.HotPlace);
            var temperature = QuantityValue.Read(context, members[HotPlaceField.Temperature], Sizes.HotTemperature);
            var sleeved = TextValue.Flag(context, members[HotPlaceField.Sleeved], "sleeved");
            if (from >= to) context.Faults.Add(entry, $"read {from:0.######} m to {to:0.######} m: a hot place ends after it begins");
            else if (to > length * Slack) context.Faults.Add(members[HotPlaceField.To], $"read {QuantityValue.Shown(members[HotPlaceField.To])}: {Sizes.HotPlace.What} is along the run's centre line, 0 to {length:0.######} m here");
            else if (double.IsFinite(from + to))
                places.Add(new HotPlace(Length.FromMeters(from), Length.FromMeters(to), double.IsFinite(temperature) ? Temperature.FromKelvins(temperature) : null, sleeved));
        }
        return places.DrainToImmutable();
    }

    static bool IsArray(ReadingContext context, JsonValue element, string right)
    {
        if (element.ValueKind is JsonValueKind.Array) return true;
        context.Faults.Add(element, $"read {Said.Value(element)}: {right}");
        return false;
    }
}

using System.Collections.Immutable;
using System.Text.Json;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of the cases.</summary>
enum CasesField
{
    Temperatures,
    Attitudes,
    Note,
}

/// <summary>The members of an attitude.</summary>
enum AttitudeField
{
    Name,
    Gravity,
    Note,
}

/// <summary>Reads the cases of the discharge.</summary>
static class CasesReader
{
    const int MostOfEach = 12;

    // 32 °F and 0 °C are one temperature less a rounding error, K.
    const double SameTemperature = 1e-6;

    /// <summary>The cases; null where they are missing or none.</summary>
    public static DischargeCases? Read(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.Cases.TryRead(context, element, out var members)) return null;
        TextValue.Read(context, members[CasesField.Note], "a note");
        return new DischargeCases(Temperatures(context, members[CasesField.Temperatures]), Attitudes(context, members[CasesField.Attitudes]));
    }

    static ImmutableArray<Temperature> Temperatures(ReadingContext context, JsonValue element)
    {
        if (!IsList(context, element, "temperatures")) return [];
        var temperatures = ImmutableArray.CreateBuilder<Temperature>();
        foreach (var entry in element.EnumerateArray())
        {
            var temperature = QuantityValue.Read(context, entry, Sizes.Temperature);
            if (!double.IsFinite(temperature)) continue;
            if (temperatures.Any(other => Math.Abs(other.Kelvins - temperature) <= SameTemperature))
                context.Faults.Add(entry, $"read {QuantityValue.Shown(entry)}: another case has that temperature already");
            temperatures.Add(Temperature.FromKelvins(temperature));
        }
        return temperatures.DrainToImmutable();
    }

    static ImmutableArray<Attitude> Attitudes(ReadingContext context, JsonValue element)
    {
        if (!IsList(context, element, "attitudes")) return [];
        var attitudes = ImmutableArray.CreateBuilder<Attitude>();
        HashSet<string> names = new(StringComparer.Ordinal);
        foreach (var entry in element.EnumerateArray())
        {
            if (!LayoutFields.Attitude.TryRead(context, entry, out var members)) continue;
            members.Requires(context, AttitudeField.Name, "the attitude's name");
            members.Requires(context, AttitudeField.Gravity, "gravity less the frame's acceleration, in g: standing upright [0, 0, -1]");
            TextValue.Read(context, members[AttitudeField.Note], "a note");
            var name = TextValue.Name(context, members[AttitudeField.Name], "an attitude's name");
            var gravity = SpaceValue.Direction(context, members[AttitudeField.Gravity], Sizes.Acceleration, mayBeZero: true);
            if (name is not null && !names.Add(name)) context.Faults.Add(members[AttitudeField.Name], $"read {Said.Name(name)}: another attitude has that name already");
            if (name is not null && gravity is { } direction) attitudes.Add(new Attitude(name, direction));
        }
        return attitudes.DrainToImmutable();
    }

    static bool IsList(ReadingContext context, JsonValue element, string what)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return false;
        if (element.ValueKind is JsonValueKind.Array && element.GetArrayLength() is >= 1 and <= MostOfEach) return true;
        var read = Said.Entries(element);
        context.Faults.Add(element, $"read {read}: {what} are an array of 1 to {MostOfEach}; leave them out for the defaults");
        return false;
    }
}

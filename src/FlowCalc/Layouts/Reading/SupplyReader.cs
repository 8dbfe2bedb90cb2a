using System.Text.Json;
using FlowCalc.Agents;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of the supply.</summary>
enum SupplyField
{
    Pressure,
    Bottle,
    Note,
}

/// <summary>Reads what drives the flow.</summary>
static class SupplyReader
{
    public const string Right = "an object with pressure, held whatever it delivers, or with bottle";

    /// <summary>The supply; null where it is missing or none.</summary>
    public static SupplyDraft Read(ReadingContext context, JsonValue element, Agent? agent)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.Supply.TryRead(context, element, out var members)) return default;
        if (members.Has(SupplyField.Note)) TextValue.Read(context, members[SupplyField.Note], "a note");
        var held = members.Has(SupplyField.Pressure);
        if (held == members.Has(SupplyField.Bottle))
            context.Faults.Add(element, held ? "read both pressure and bottle: a supply is one of them" : $"read neither pressure nor bottle: a supply is {Right}");
        else if (held && context.Options.NeedsBottle)
            context.Faults.Add(element, "read a supply held at a pressure, which has no end: a discharge needs a bottle, { \"bottle\": { … } }");
        var pressure = PressureValue.ReadOverAmbient(context, members[SupplyField.Pressure], "a supply's pressure");
        var bottle = members.Has(SupplyField.Bottle) ? BottleReader.Read(context, members[SupplyField.Bottle], agent) : default;
        return bottle with
        {
            Supply = held ? double.IsFinite(pressure) ? new HeldSupply(Pressure.FromPascals(pressure)) : null : bottle.Supply,
        };
    }
}

/// <summary>A supply as far as it was read.</summary>
/// <param name="Supply">The supply; null where it could not be read.</param>
/// <param name="ChargeTemperature">The bottle's charge temperature, K; null without a bottle.</param>
/// <param name="ChargeTemperatureElement">Where the document states it.</param>
readonly record struct SupplyDraft(Supply? Supply, double? ChargeTemperature, JsonValue ChargeTemperatureElement);

using System.Text.Json;
using FlowCalc.Layouts.Coverage;
using FlowCalc.Layouts.Reading.Coverage;
using FlowCalc.Losses;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of an entry of the document's nozzles.</summary>
enum NozzleField
{
    KFactor,
    Orifice,
    PressureRange,
    Spray,
    Note,
}

/// <summary>The members of an orifice.</summary>
enum OrificeField
{
    Diameter,
    DischargeCoefficient,
    Count,
    Note,
}

/// <summary>What a nozzle lets through, and between which pressures.</summary>
/// <param name="KFactor">K in m³/(s·√Pa) at 1000 kg/m³; NaN where it could not be read.</param>
/// <param name="Orifice">The holes; null for a K-factor.</param>
/// <param name="PressureRange">Pressures at which it does its work; null for none.</param>
sealed record NozzleOpening(double KFactor, NozzleOrifice? Orifice, PressureRange? PressureRange)
{
    /// <summary>Its spray; null for none.</summary>
    public Spray? Spray { get; init; }
}

/// <summary>Reads what nozzles of a document have in common, by name or in a point.</summary>
static class NozzleReader
{
    /// <summary>An entry of the document's nozzles; null where something is wrong.</summary>
    public static NozzleOpening? Own(ReadingContext context, string name, JsonValue element)
    {
        if (!LayoutFields.Nozzle.TryRead(context, element, out var members)) return null;
        var before = context.Faults.Count;
        TextValue.Read(context, members[NozzleField.Note], "a note");
        if (members.Has(NozzleField.KFactor) == members.Has(NozzleField.Orifice))
            context.Faults.Add(element, members.Has(NozzleField.KFactor) ? "read both kFactor and orifice: a nozzle has one of them" : "read neither kFactor nor orifice: a nozzle has one of them");
        var opening = Opening(context, members[NozzleField.KFactor], members[NozzleField.Orifice]);
        var range = Range(context, members[NozzleField.PressureRange]);
        var spray = SprayReader.Read(context, members[NozzleField.Spray]);
        return context.Faults.Count > before ? null : opening with { PressureRange = range, Spray = spray };
    }

    /// <summary>A K-factor, given or from an orifice; NaN where both are missing or wrong.</summary>
    public static NozzleOpening Opening(ReadingContext context, JsonValue kFactor, JsonValue orifice)
    {
        var given = QuantityValue.Read(context, kFactor, Sizes.KFactor);
        if (orifice.ValueKind is JsonValueKind.Undefined) return new NozzleOpening(given, null, null);
        return Holes(context, orifice) is { } holes
            ? new NozzleOpening(Losses.KFactor.FromEffectiveArea(Orifice.EffectiveArea(holes.Diameter.Meters, holes.DischargeCoefficient, holes.Count)), holes, null)
            : new NozzleOpening(double.NaN, null, null);
    }

    /// <summary>The pressures at which a nozzle does its work; null where missing or wrong.</summary>
    public static PressureRange? Range(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return null;
        if (element.ValueKind is not JsonValueKind.Array || element.GetArrayLength() != 2)
        {
            context.Faults.Add(element, $"read {Said.Value(element)}: a pressure range is the least and the most pressure, [\"3 bar\", \"16 bar\"]");
            return null;
        }
        var least = PressureValue.Read(context, element[0]);
        var most = PressureValue.Read(context, element[1]);
        if (least < context.Ambient)
        {
            context.Faults.Add(element[0], $"read {QuantityValue.Shown(element[0])}: a nozzle's pressure is not under the ambient pressure of {context.Ambient / 1e5:0.#####} bara");
            return null;
        }
        if (least >= most) context.Faults.Add(element, $"read {QuantityValue.Shown(element[0])} to {QuantityValue.Shown(element[1])}: the least pressure comes first and is below the most");
        return double.IsFinite(least + most) ? new PressureRange(Pressure.FromPascals(least), Pressure.FromPascals(most)) : null;
    }

    static NozzleOrifice? Holes(ReadingContext context, JsonValue element)
    {
        if (!LayoutFields.Orifice.TryRead(context, element, out var members)) return null;
        members.Requires(context, OrificeField.Diameter, Sizes.Hole);
        members.Requires(context, OrificeField.DischargeCoefficient, Sizes.DischargeCoefficient);
        TextValue.Read(context, members[OrificeField.Note], "a note");
        var diameter = QuantityValue.Read(context, members[OrificeField.Diameter], Sizes.Hole);
        var coefficient = NumberValue.Read(context, members[OrificeField.DischargeCoefficient], Sizes.DischargeCoefficient);
        var count = NumberValue.Count(context, members[OrificeField.Count]);
        return double.IsFinite(diameter + coefficient) ? new NozzleOrifice(Length.FromMeters(diameter), coefficient, count) : null;
    }
}

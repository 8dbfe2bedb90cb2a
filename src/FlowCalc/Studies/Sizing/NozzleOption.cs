using FlowCalc.Layouts;
using FlowCalc.Losses;
using UnitsNet;

namespace FlowCalc.Studies.Sizing;

/// <summary>A nozzle of the stock: a type of the document, holes of a diameter, or a K-factor.</summary>
public sealed record NozzleOption
{
    /// <summary>Name among the document's nozzles; null for holes or a K-factor.</summary>
    public string? Type { get; init; }

    /// <summary>K in m³/(s·√Pa) at 1000 kg/m³, of a type or of its own; null for holes.</summary>
    public double? KFactor { get; init; }

    /// <summary>Holes of the type; null for others.</summary>
    public NozzleOrifice? TypeOrifice { get; init; }

    /// <summary>Pressures at which the type does its work; null for none or another option.</summary>
    public PressureRange? PressureRange { get; init; }

    /// <summary>Diameter of one hole; null for a type or a K-factor.</summary>
    public Length? Diameter { get; init; }

    /// <summary>Discharge coefficient of the hole, over 0 to 1; null to keep the nozzle's own.</summary>
    public double? DischargeCoefficient { get; init; }

    /// <summary>A nozzle with this option in its place; a nozzle keeps its number of holes, and one that is of this size already stays as it is.</summary>
    /// <param name="nozzle">The nozzle as it is.</param>
    /// <returns>Null where holes state no discharge coefficient and the nozzle has none to keep.</returns>
    public Nozzle? On(Nozzle nozzle)
    {
        ArgumentNullException.ThrowIfNull(nozzle);
        if (Type is not null) return nozzle with { KFactor = KFactor!.Value, Orifice = TypeOrifice, Type = Type, PressureRange = PressureRange ?? nozzle.PressureRange };
        if (Diameter is not { } diameter) return nozzle.KFactor == KFactor!.Value ? nozzle : nozzle with { KFactor = KFactor.Value, Orifice = null, Type = null };
        if ((DischargeCoefficient ?? nozzle.Orifice?.DischargeCoefficient) is not { } coefficient) return null;
        var count = nozzle.Orifice?.Count ?? 1;
        var factor = Losses.KFactor.FromEffectiveArea(Orifice.EffectiveArea(diameter.Meters, coefficient, count));
        return nozzle.KFactor == factor ? nozzle : nozzle with { KFactor = factor, Orifice = new(diameter, coefficient, count), Type = null };
    }
}

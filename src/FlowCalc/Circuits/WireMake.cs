using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Circuits;

/// <summary>What a wire is made of, from which its resistance follows.</summary>
/// <param name="Length">Length one way, over 0.</param>
/// <param name="Area">Cross-section; null where it is given by its gauge.</param>
/// <param name="Gauge">American wire gauge, 0 to 40; null where its cross-section is given.</param>
/// <param name="Cable">What standard the cross-section is of.</param>
/// <param name="Temperature">Temperature of the wire.</param>
/// <param name="Coefficient">Growth of the resistance over that at 20 °C, 1/K.</param>
public sealed record WireMake(Length Length, Area? Area, int? Gauge, CableKind Cable, Temperature Temperature, double Coefficient)
{
    /// <summary>Growth of copper's resistance over that at 20 °C, 1/K (IEC 60028, from memory).</summary>
    public const double Copper = 0.00393;

    const double Reference = 293.15;

    /// <summary>Resistance: of the table where it has the size, else ρ·L/A of annealed copper; R = R20·(1 + α·(t − 20 °C)).</summary>
    public ElectricResistance Resistance => ElectricResistance.FromOhms(OhmsPerMetre * Length.Meters * (1 + Coefficient * (Temperature.Kelvins - Reference)));

    /// <summary>Resistance at 20 °C, Ω/m.</summary>
    public double OhmsPerMetre => Gauge is { } gauge
        ? AmericanWireGauge.OhmsPerMetre(gauge)
        : Size is { } size ? (Cable == CableKind.Tinned ? size.TinnedOhmsPerMetre : null) ?? size.OhmsPerMetre : AmericanWireGauge.CopperResistivity / Area!.Value.SquareMeters;

    /// <summary>Cross-section of its copper, m².</summary>
    public double CopperArea => Area?.SquareMeters ?? AmericanWireGauge.Area(Gauge!.Value);

    /// <summary>Whether the resistance is that of a table or of a gauge, not worked out of a cross-section that no table has.</summary>
    public bool IsListed => Gauge is not null || Size is not null;

    /// <summary>The same wire with the next larger size of its standard; null where there is none.</summary>
    public WireMake? Larger
    {
        get
        {
            if (Gauge is { } gauge) return gauge - 2 < AmericanWireGauge.Thickest ? null : this with { Gauge = gauge - 2 };
            foreach (var size in WireSize.All)
                if (size.Kind == TableKind && size.Area.SquareMeters > Area!.Value.SquareMeters * (1 + 1e-6)) return this with { Area = size.Area };
            return null;
        }
    }

    WireSize? Size => Area is { } area ? WireSize.Find(TableKind, area.SquareMeters) : null;

    string TableKind => Cable == CableKind.RoadVehicle ? "road-vehicle" : "flexible";
}

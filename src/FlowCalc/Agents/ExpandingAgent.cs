using System.Collections.Immutable;
using FlowCalc.ReferenceData;

namespace FlowCalc.Agents;

/// <summary>A gas or a liquefied gas: an agent whose density falls along the way.</summary>
public sealed class ExpandingAgent : Agent
{
    // Bottles from arctic cold to a car in the sun, and beyond what any of them is made for.
    const double Coldest = 220;
    const double Warmest = 400;

    // Nearer to its critical point an agent under nitrogen is told by none of the model's laws.
    const double PartOfCritical = 0.96;

    // Where ISO 14520 has figures that the model for nitrogen was held against.
    const double AnchoredFrom = 263.15;
    const double AnchoredTo = 323.15;

    readonly double lowest, highest;

    ExpandingAgent(Fluid fluid, AgentKind kind, CsvRow row)
        : base(fluid.Id, fluid.Title, row.OptionalText("note"), [.. fluid.Sources, .. row.Sources])
    {
        (Fluid, Kind, Solubility) = (fluid, kind, kind == AgentKind.LiquefiedUnderNitrogen ? NitrogenSolubility.Of(fluid.Id) : null);
        (UsualFill, HighestUnharmed, LowestHarmful, People) = (row.OptionalNumber("usual_fill_kg_m3"), row.OptionalNumber("noael_percent") / 100, row.OptionalNumber("loael_percent") / 100, row.Text("people"));
        lowest = Math.Max(Coldest, fluid.LowestTemperature);
        highest = kind == AgentKind.LiquefiedUnderNitrogen ? Math.Min(Warmest, PartOfCritical * fluid.CriticalTemperature) : Math.Min(Warmest, fluid.HighestTemperature);
    }

    /// <inheritdoc/>
    public override AgentKind Kind { get; }

    /// <inheritdoc/>
    public override double? FreezingPoint => null;

    /// <inheritdoc/>
    public override double LowestTemperature => lowest;

    /// <inheritdoc/>
    public override double HighestTemperature => highest;

    /// <summary>Critical temperature, K; null for a gas that never condenses in a bottle.</summary>
    public double? CriticalTemperature => Kind == AgentKind.InertGas ? null : Fluid.CriticalTemperature;

    /// <summary>Fill density that standards usually allow, kg/m³; null for a gas.</summary>
    public double? UsualFill { get; }

    /// <summary>Highest concentration in air without harm seen (NOAEL), 0 to 1; null where there is none.</summary>
    public double? HighestUnharmed { get; }

    /// <summary>Lowest concentration in air with harm seen (LOAEL), 0 to 1; null where it is not known or there is none.</summary>
    public double? LowestHarmful { get; }

    /// <summary>Temperatures between which the model of dissolved nitrogen was held against published pressures, K; null where there is no nitrogen in it.</summary>
    public (double Low, double High)? Anchored => Solubility is null ? null : (AnchoredFrom, AnchoredTo);

    /// <summary>Whether the model of dissolved nitrogen rests on an estimate alone.</summary>
    public bool IsWeak => Solubility is { Confidence: not "fair" };

    /// <summary>Pressure of the triple point, Pa absolute, where the discharge is followed no further; 0 where none comes within reach.</summary>
    internal double FloorPressure => Id == "carbon-dioxide" ? Fluid.Saturation!.LowestPressure : 0;

    /// <summary>Whether people may be where it is let go: never, no, limited by concentration, or limited by what oxygen is left.</summary>
    internal string People { get; }

    internal Fluid Fluid { get; }

    internal NitrogenSolubility? Solubility { get; }

    /// <summary>Liquid and vapour in equilibrium, by the equation itself.</summary>
    /// <param name="temperature">Temperature, K, from <see cref="Agent.LowestTemperature"/> to 0.995 of the critical one.</param>
    /// <exception cref="InvalidOperationException">The agent is a gas that never condenses in a bottle.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside.</exception>
    public SaturationPoint SaturationAt(double temperature)
    {
        if (Fluid.Saturation is not { } curve) throw new InvalidOperationException($"{Title} never condenses in a bottle.");
        if (!(temperature >= lowest && temperature <= curve.HighestTemperature)) throw new ArgumentOutOfRangeException(nameof(temperature), temperature, "Range: from the lowest temperature answered to 0.995 of the critical one.");
        var point = Fluid.ExactSaturation(temperature);
        return new(temperature, point.Pressure, point.LiquidDensity, point.VapourDensity, Fluid.LiquidViscosity(temperature));
    }

    /// <summary>Highest temperature of <see cref="SaturationAt"/>, K; null for a gas.</summary>
    public double? HighestSaturation => Kind == AgentKind.InertGas ? null : Math.Min(Warmest, Fluid.Saturation!.HighestTemperature);

    /// <summary>Reads all of them.</summary>
    internal static ImmutableArray<ExpandingAgent> ReadAll() =>
        [.. CsvTable.Embedded("agents/expanding.csv").Rows.Select(row => new ExpandingAgent(Fluid.Of(row.Text("id")), KindOf(row.Text("kind")), row))];

    /// <inheritdoc/>
    internal override double RestDensity(double temperature, double pressure)
    {
        var isLiquid = Kind != AgentKind.InertGas && temperature < Fluid.CriticalTemperature && pressure >= Fluid.ExactSaturation(temperature).Pressure;
        return isLiquid ? Fluid.LiquidDensity(temperature, pressure) : Fluid.GasDensity(temperature, pressure);
    }

    static AgentKind KindOf(string word) => word switch
    {
        "inert" => AgentKind.InertGas,
        "liquefied" => AgentKind.LiquefiedGas,
        "under-nitrogen" => AgentKind.LiquefiedUnderNitrogen,
        _ => throw new InvalidDataException($"agents/expanding.csv: '{word}' is no kind."),
    };
}

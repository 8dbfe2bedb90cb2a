using System.Collections.Immutable;
using FlowCalc.Agents;
using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>What a test of the built system showed. The flow does not use it.</summary>
public sealed record Measured
{
    /// <summary>The liquid of the test.</summary>
    public required LiquidAgent Agent { get; init; }

    /// <summary>Its temperature.</summary>
    public required Temperature Temperature { get; init; }

    /// <summary>Absolute total pressure held at the supply point; null where the whole discharge of the bottle was timed.</summary>
    public Pressure? SupplyPressure { get; init; }

    /// <summary>The readings, at least one: flows, then pressures, in the document's order; or the time of a discharge alone.</summary>
    public required ImmutableArray<MeasuredReading> Readings { get; init; }

    /// <summary>What is to be tried; empty for all.</summary>
    public ImmutableArray<CauseKind> Suspects { get; init; } = [];

    /// <summary>What the document left open of the test and what was taken.</summary>
    public ImmutableArray<Assumption> Assumptions { get; init; } = [];
}

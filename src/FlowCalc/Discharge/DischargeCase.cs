using System.Collections.Immutable;
using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>A discharge at one temperature in one attitude.</summary>
public sealed record DischargeCase
{
    /// <summary>Temperature of bottle and contents.</summary>
    public required Temperature Temperature { get; init; }

    /// <summary>The attitude.</summary>
    public required Attitude Attitude { get; init; }

    /// <summary>Why the case has no discharge; null where it has one.</summary>
    public DischargeFailure? Failure { get; init; }

    /// <summary>Absolute pressure in the bottle before the valve opens; null where it is not known.</summary>
    public Pressure? StartPressure { get; init; }

    /// <summary>Part of the bottle that the liquid fills before the valve opens, 0 to 1 and over; NaN where the liquid's density is not known or there is none.</summary>
    public double LiquidPart { get; init; }

    /// <summary>When 95 % of the contents were out of the nozzles; null where that never happens.</summary>
    public Duration? Time95 { get; init; }

    /// <summary>When the part that the requirement names was out of the nozzles; null where that never happens or nothing is required.</summary>
    public Duration? RequiredTime { get; init; }

    /// <summary>When the dip tube began to draw gas; null where it never did, or never drew liquid.</summary>
    public Duration? LiquidEnd { get; init; }

    /// <summary>When the discharge was over.</summary>
    public Duration End { get; init; }

    /// <summary>Why it was over.</summary>
    public StopReason Reason { get; init; }

    /// <summary>Greatest flow out of all nozzles together.</summary>
    public MassFlow PeakMassFlow { get; init; }

    /// <summary>Greatest absolute pressure in the bottle.</summary>
    public Pressure PeakPressure { get; init; }

    /// <summary>Agent left in the bottles.</summary>
    public Mass LeftInBottle { get; init; }

    /// <summary>Agent left in dip tubes and line.</summary>
    public Mass LeftInTubes { get; init; }

    /// <summary>Most agent that dip tubes and line held at once, where it is told: of a gas or of an agent that boils; else null.</summary>
    public Mass? MostInTubes { get; init; }

    /// <summary>Lowest temperature of the gas in the bottle, where it is told: of a gas or of an agent that boils; else null.</summary>
    public Temperature? ColdestGas { get; init; }

    /// <summary>Liquid that the attitude keeps from the dip tube, part of the fill, 0 to 1.</summary>
    public double OutOfReach { get; init; }

    /// <summary>Exponent n of p·Vⁿ that the cushion followed; null where the gas did not expand.</summary>
    public double? CushionExponent { get; init; }

    /// <summary>What each nozzle gave, in the order of <see cref="Layout.Points"/>.</summary>
    public ImmutableArray<NozzleDischarge> Nozzles { get; init; } = [];

    /// <summary>What each zone got, in the order of <see cref="Layout.Zones"/>.</summary>
    public ImmutableArray<Flows.ZoneShare> Zones { get; init; } = [];

    /// <summary>How far the uncertain choices of the model move the answer; null where it has none.</summary>
    public DischargeBand? Band { get; init; }

    /// <summary>How far the flow may be taken as steady at each instant; null without a discharge.</summary>
    public QuasiSteadyCheck? QuasiSteady { get; init; }

    /// <summary>The discharge through time; null without one.</summary>
    public DischargeSeries? Series { get; init; }

    /// <summary>Steps of time that it took.</summary>
    public int Steps { get; init; }

    /// <summary>Largest part of the contents by which the books of any step were out.</summary>
    public double MassDefect { get; init; }
}

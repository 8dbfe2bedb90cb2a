using FlowCalc.Agents;
using FlowCalc.Networks;

namespace FlowCalc.Discharge;

/// <summary>One discharge of a gas or a liquefied gas as the integrator takes it: SI numbers and a network, no names, no units.</summary>
internal sealed record ExpandingProblem
{
    /// <summary>The whole line. Run 0 leads from the outlet's inlet to the supply point; rises hold for the attitude.</summary>
    public required Network Network { get; init; }

    /// <summary>Volume inside each run, m³, in solve order.</summary>
    public required double[] Volume { get; init; }

    /// <summary>Area of each run's bore, m², in solve order; of run 0 for all bottles together.</summary>
    public required double[] Area { get; init; }

    /// <summary>Absolute pressure outside the nozzles, Pa.</summary>
    public required double Ambient { get; init; }

    /// <summary>One bottle.</summary>
    public required IExpandingBottle Bottle { get; init; }

    /// <summary>Identical bottles let go together.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Liquid that stays in one bottle when gas reaches the inlet of the outlet, m³.</summary>
    public double VolumeLeft { get; init; }

    /// <summary>Time until the valve is open, s.</summary>
    public double OpeningTime { get; init; }

    /// <summary>Resistance that the valve has at the area to which it opens, 1/m⁴; while it opens its area grows in proportion to time.</summary>
    public double ValveResistance { get; init; }

    /// <summary>Absolute pressure that a regulator holds, Pa; infinite without one.</summary>
    public double SetPressure { get; init; } = double.PositiveInfinity;

    /// <summary>How far the agent boils in the nozzles.</summary>
    public NozzleModel Nozzles { get; init; }

    /// <summary>Absolute pressure in the bottle at which the model ends, Pa: that of the triple point; 0 for none.</summary>
    public double FloorPressure { get; init; }

    /// <summary>Masses of agent whose times are asked, kg, rising.</summary>
    public double[] Thresholds { get; init; } = [];

    /// <summary>Whether only times and shares are asked, not curves.</summary>
    public bool IsBrief { get; init; }

    /// <summary>Largest part of the charge, and of the pressure, in one step: the rule of a step is of second order.</summary>
    public double LargestPart { get; init; } = 0.08;
}

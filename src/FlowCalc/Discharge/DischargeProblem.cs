using FlowCalc.Bottles;
using FlowCalc.Networks;

namespace FlowCalc.Discharge;

/// <summary>One discharge as the integrator takes it: SI numbers and a network, no names, no units.</summary>
internal sealed record DischargeProblem
{
    /// <summary>The whole line. Run 0 leads from the dip tube's inlet to the supply point; rises hold for the attitude.</summary>
    public required Network Network { get; init; }

    /// <summary>Volume inside each run, m³, in solve order; 0 for a run that is passed at once.</summary>
    public required double[] Volume { get; init; }

    /// <summary>Area of each run's bore, m², in solve order; of run 0 for all bottles together.</summary>
    public required double[] Area { get; init; }

    /// <summary>The liquid.</summary>
    public required LiquidPath Liquid { get; init; }

    /// <summary>Absolute pressure outside the nozzles, Pa.</summary>
    public required double Ambient { get; init; }

    /// <summary>The gas in each bottle.</summary>
    public required Cushion Cushion { get; init; }

    /// <summary>Identical bottles let go together.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Volume of one bottle, m³.</summary>
    public required double BottleVolume { get; init; }

    /// <summary>Volume of the liquid in one bottle, its dip tube included, m³.</summary>
    public required double LiquidVolume { get; init; }

    /// <summary>Liquid that stays in one bottle when gas reaches the inlet of the dip tube, m³.</summary>
    public double VolumeLeft { get; init; }

    /// <summary>Volume of the gas in one bottle when gas reaches the inlet of the dip tube, m³: its dip tube is still full.</summary>
    public double UncoveringVolume => BottleVolume - VolumeLeft - Volume[0] / Count;

    /// <summary>Where the liquid lies in the bottle; null where that is unknown.</summary>
    public LiquidLevel? Level { get; init; }

    /// <summary>Whether the head from the liquid's surface down to the inlet counts.</summary>
    public bool HasHead { get; init; }

    /// <summary>Height of the inlet of the dip tube along <see cref="Level"/>, m.</summary>
    public double InletHeight { get; init; }

    /// <summary>Effective gravity in g.</summary>
    public double Gravity { get; init; } = 1;

    /// <summary>Area of the wall of one bottle, m², where <see cref="Level"/> is null.</summary>
    public double WallArea { get; init; }

    /// <summary>Time until the valve is open, s.</summary>
    public double OpeningTime { get; init; }

    /// <summary>Resistance that the valve has at the area to which it opens, 1/m⁴; while it opens its area grows in proportion to time.</summary>
    public double ValveResistance { get; init; }

    /// <summary>Absolute pressure that a regulator holds at the supply point, Pa; infinite without one.</summary>
    public double SetPressure { get; init; } = double.PositiveInfinity;

    /// <summary>Part of a swept tube's volume that stays as a film on its wall, 0 to 1.</summary>
    public double Film { get; init; }

    /// <summary>Density of the air in the line, kg/m³; 0 where it leaves without resistance.</summary>
    public double AirDensity { get; init; }

    /// <summary>The discharge has ended where the bottle's pressure is this many times the surroundings'.</summary>
    public double EndRatio { get; init; } = 1.01;

    /// <summary>Error allowed a step, relative to the bottle's volume, the charge, a run's length and the gas temperature.</summary>
    public double Tolerance { get; init; } = 1e-5;

    /// <summary>The rule by which it steps.</summary>
    public RungeKuttaPair Pair { get; init; } = RungeKuttaPair.DormandPrince;

    /// <summary>Masses out of all nozzles, kg, whose times are asked; rising.</summary>
    public double[] Thresholds { get; init; } = [];

    /// <summary>Whether only times and masses are asked, and no curves.</summary>
    public bool IsBrief { get; init; }
}

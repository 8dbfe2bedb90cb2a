namespace FlowCalc.Discharge;

/// <summary>What one discharge gave, as numbers: SI, nozzles in solve order.</summary>
internal sealed record DischargeCourse
{
    /// <summary>Why there is no answer; null where there is one.</summary>
    public string? Failure { get; init; }

    /// <summary>When the inlet of the dip tube uncovered, s; NaN where it did not.</summary>
    public double LiquidEnd { get; init; } = double.NaN;

    /// <summary>When the discharge ended, s.</summary>
    public double End { get; init; }

    /// <summary>Why it ended.</summary>
    public StopReason Reason { get; init; }

    /// <summary>When each of the problem's masses had left the nozzles, s; NaN where it never had.</summary>
    public double[] Thresholds { get; init; } = [];

    /// <summary>When liquid came to each nozzle, s; NaN where it never did.</summary>
    public double[] Arrival { get; init; } = [];

    /// <summary>When gas came to each nozzle, s; NaN where it never did.</summary>
    public double[] NozzleLiquidEnd { get; init; } = [];

    /// <summary>Mass of liquid out of each nozzle, kg.</summary>
    public double[] Delivered { get; init; } = [];

    /// <summary>Pressure rise by which the front's stop at each nozzle is bounded, as a change of velocity, m/s.</summary>
    public double[] VelocityChange { get; init; } = [];

    /// <summary>Greatest flow out of all nozzles, kg/s; 0 where no curves are asked.</summary>
    public double PeakNozzleFlow { get; init; }

    /// <summary>Greatest flow out of the bottles, kg/s.</summary>
    public double PeakFlow { get; init; }

    /// <summary>Greatest flow out of all nozzles while the dip tube drew liquid, kg/s.</summary>
    public double PeakFullFlow { get; init; }

    /// <summary>Flow of each run then, kg/s, in solve order.</summary>
    public double[] PeakRunFlow { get; init; } = [];

    /// <summary>Speed of sound in each run then, m/s, in solve order; empty where that of the liquid counts.</summary>
    public double[] PeakSoundSpeed { get; init; } = [];

    /// <summary>Absolute pressure in the bottle then, Pa.</summary>
    public double PeakDrive { get; init; }

    /// <summary>Liquid left in the bottles, kg; that in their dip tubes counts as in tubes.</summary>
    public double LeftInBottle { get; init; }

    /// <summary>Liquid left in the line, kg, and of it what clings to the wall as a film.</summary>
    public double LeftInTubes { get; init; }

    /// <summary>Most agent that the line held, kg; 0 where it is not told.</summary>
    public double PeakInLine { get; init; }

    /// <summary>Gas left in one bottle and the line, kg.</summary>
    public double GasLeft { get; init; }

    /// <summary>Largest part of the charge that the books of any step were out by.</summary>
    public double MassDefect { get; init; }

    /// <summary>Exponent n of p·Vⁿ between the start and the end of the liquid; NaN where the gas did not expand.</summary>
    public double EffectiveExponent { get; init; } = double.NaN;

    /// <summary>Steps tried.</summary>
    public int Steps { get; init; }

    /// <summary>What was recorded, in rising time.</summary>
    public DischargeSample[] Samples { get; init; } = [];

    /// <summary>When the line was filled; null where it never was.</summary>
    public FilledLine? Filled { get; init; }

    /// <summary>Part of all that left the nozzles that one of them gave, 0 to 1; 0 where nothing left.</summary>
    /// <param name="nozzle">Which nozzle.</param>
    public double Share(int nozzle)
    {
        double total = 0;
        foreach (var mass in Delivered) total += mass;
        return total > 0 ? Delivered[nozzle] / total : 0;
    }
}

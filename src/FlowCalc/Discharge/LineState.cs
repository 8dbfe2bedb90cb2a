namespace FlowCalc.Discharge;

/// <summary>How far liquid and gas have come in each run; positions are parts of the run's volume, 0 to 1.</summary>
/// <param name="count">Number of runs.</param>
internal sealed class LineState(int count)
{
    /// <summary>Front of the liquid; 1 where it has reached the run's end.</summary>
    public double[] Head { get; } = new double[count];

    /// <summary>Front of the gas behind the liquid.</summary>
    public double[] Tail { get; } = new double[count];

    /// <summary>Whether liquid has come to the run's start.</summary>
    public bool[] IsReached { get; } = new bool[count];

    /// <summary>Whether the liquid stands at the run's end.</summary>
    public bool[] IsFull { get; } = new bool[count];

    /// <summary>Whether gas has come to the run's start.</summary>
    public bool[] IsSwept { get; } = new bool[count];

    /// <summary>Whether gas has come to the run's end.</summary>
    public bool[] IsGas { get; } = new bool[count];

    /// <summary>Whether the run's front will not move again: air behind a closed end holds it.</summary>
    public bool[] IsHeld { get; } = new bool[count];

    /// <summary>Pressure times volume of the air shut in ahead of the front, Pa·m³; 0 where it can leave.</summary>
    public double[] ShutAir { get; } = new double[count];

    /// <summary>Takes over another's positions.</summary>
    /// <param name="other">A state of the same line.</param>
    public void CopyFrom(LineState other)
    {
        other.Head.CopyTo(Head, 0);
        other.Tail.CopyTo(Tail, 0);
        other.IsReached.CopyTo(IsReached, 0);
        other.IsFull.CopyTo(IsFull, 0);
        other.IsSwept.CopyTo(IsSwept, 0);
        other.IsGas.CopyTo(IsGas, 0);
        other.IsHeld.CopyTo(IsHeld, 0);
        other.ShutAir.CopyTo(ShutAir, 0);
    }

    /// <summary>Whether liquid is in the run, or is about to enter.</summary>
    /// <param name="run">The run.</param>
    public bool HasLiquid(int run) => IsReached[run] && !IsGas[run];
}

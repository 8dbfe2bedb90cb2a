using MathNet.Numerics.RootFinding;

namespace FlowCalc.Discharge;

/// <summary>Finds what ends a step early, and when.</summary>
internal sealed class CrossingSearch(DischargeProblem problem, LineState line, StateVector vector)
{
    // What is this near its end, as part of a run or of the bottle, has come to it: equal branches fill at once though their rounding differs.
    const double AtOnce = 1e-10;

    // Of the gas in a first step; and a step where nothing moves, s.
    const double LargestExpansion = 0.2;
    const double StepAtRest = 1e-3;

    /// <summary>The crossings that may come in a phase.</summary>
    /// <param name="tree">What is wetted.</param>
    /// <param name="time">Now, s.</param>
    /// <param name="isUncovered">Whether the dip tube draws gas.</param>
    /// <param name="isGasOut">Whether a nozzle passes gas.</param>
    /// <param name="crossings">The list; overwritten.</param>
    public void List(WettedTree tree, double time, bool isUncovered, bool isGasOut, List<Crossing> crossings)
    {
        crossings.Clear();
        foreach (var k in tree.Moving)
        {
            var run = tree.Runs[k];
            if (!line.IsFull[run] && !line.IsHeld[run]) crossings.Add(new(CrossingKind.LiquidAtEnd, run));
            if (line.IsSwept[run]) crossings.Add(new(CrossingKind.GasAtEnd, run));
        }
        if (!isUncovered) crossings.Add(new(CrossingKind.Uncovered, 0));
        if (time < problem.OpeningTime) crossings.Add(new(CrossingKind.ValveOpen, 0));
        if (isGasOut) crossings.Add(new(CrossingKind.Equalised, 0));
    }

    /// <summary>Whether a crossing has come, or is within rounding of it.</summary>
    public bool HasCome(Crossing crossing, double time, ReadOnlySpan<double> y) =>
        Past(crossing, time, y) >= (crossing.Kind == CrossingKind.ValveOpen ? 0 : -AtOnce);

    /// <summary>A step to the nearest crossing at the present speeds, and a little more since fronts slow down.</summary>
    /// <param name="crossings">What may come.</param>
    /// <param name="time">Now, s.</param>
    /// <param name="y">State.</param>
    /// <param name="rates">Its rates.</param>
    /// <returns>Size of a step, s.</returns>
    public double FirstStep(List<Crossing> crossings, double time, ReadOnlySpan<double> y, ReadOnlySpan<double> rates)
    {
        var first = double.PositiveInfinity;
        foreach (var crossing in crossings)
        {
            var left = -Past(crossing, time, y);
            var speed = crossing.Kind == CrossingKind.ValveOpen ? 1 : Speed(crossing, rates);
            if (speed > 0 && left > 0) first = Math.Min(first, 1.05 * left / speed);
        }
        var expansion = rates[StateVector.GasVolume] / y[StateVector.GasVolume] - rates[StateVector.GasMass] / y[StateVector.GasMass];
        if (expansion > 0) first = Math.Min(first, LargestExpansion / expansion);
        return double.IsFinite(first) ? first : StepAtRest;
    }

    /// <summary>How far fronts and bottle can go on in a straight line before the first of the crossings comes.</summary>
    /// <param name="crossings">What may come.</param>
    /// <param name="time">Now, s.</param>
    /// <param name="y">State.</param>
    /// <param name="rates">Its rates.</param>
    /// <param name="most">Asked for, s at these rates.</param>
    /// <returns>Time at these rates, s; at most what was asked for.</returns>
    public double Reach(List<Crossing> crossings, double time, ReadOnlySpan<double> y, ReadOnlySpan<double> rates, double most)
    {
        foreach (var crossing in crossings)
        {
            var speed = crossing.Kind == CrossingKind.Uncovered ? rates[StateVector.GasVolume] / problem.BottleVolume : Speed(crossing, rates);
            if (speed > 0) most = Math.Min(most, Math.Max(-Past(crossing, time, y), 0) / speed);
        }
        return most;
    }

    /// <summary>Part of the step after which the first of the crossings comes; 1 where none does.</summary>
    /// <param name="crossings">What may come.</param>
    /// <param name="stepper">The step.</param>
    /// <param name="time">Time at its start, s.</param>
    /// <param name="step">Its size, s.</param>
    public double First(List<Crossing> crossings, EmbeddedStep stepper, double time, double step)
    {
        double first = 1;
        foreach (var crossing in crossings)
        {
            // A step ends where the valve is open.
            if (crossing.Kind == CrossingKind.ValveOpen || !(Past(crossing, time + step, stepper.End) > 0)) continue;
            // What has come before the step, such as gas in a run whose front was sucked back by the error of a step, ends it where it starts.
            if (Past(crossing, time, new StepAt(stepper, 0)) >= 0) return 0;
            // The polynomial may miss by rounding what the step's end has just passed: then that is where it comes.
            if (Brent.TryFindRoot(part => Past(crossing, time + part * step, new StepAt(stepper, part)), 0, 1, 1e-13, 100, out var root)) first = Math.Min(first, root);
        }
        return first;
    }

    double Speed(Crossing crossing, ReadOnlySpan<double> rates) => crossing.Kind switch
    {
        CrossingKind.LiquidAtEnd => rates[vector.Heads + crossing.Run],
        CrossingKind.GasAtEnd => rates[vector.Tails + crossing.Run] - rates[vector.Heads + crossing.Run],
        _ => 0,
    };

    double Past(Crossing crossing, double time, ReadOnlySpan<double> y) => Past(crossing, time, new StateAt(y));

    // Negative before it.
    double Past<TEntries>(Crossing crossing, double time, TEntries y) where TEntries : IEntries, allows ref struct => crossing.Kind switch
    {
        CrossingKind.LiquidAtEnd => y[vector.Heads + crossing.Run] - 1,
        CrossingKind.GasAtEnd => y[vector.Tails + crossing.Run] - y[vector.Heads + crossing.Run],
        CrossingKind.Uncovered => (y[StateVector.GasVolume] - problem.UncoveringVolume) / problem.BottleVolume,
        CrossingKind.ValveOpen => time - problem.OpeningTime,
        CrossingKind.Equalised => 1 - problem.Cushion.At(y[StateVector.GasTemperature], y[StateVector.GasMass] / y[StateVector.GasVolume]).Pressure / (problem.EndRatio * problem.Ambient),
        _ => throw new ArgumentOutOfRangeException(nameof(crossing), crossing, "Not a crossing."),
    };

    // Entries of a state, stored or on a step's polynomial, of which a crossing needs no more than three.
    interface IEntries
    {
        double this[int entry] { get; }
    }

    readonly ref struct StateAt(ReadOnlySpan<double> y) : IEntries
    {
        readonly ReadOnlySpan<double> y = y;

        public double this[int entry] => y[entry];
    }

    readonly struct StepAt(EmbeddedStep stepper, double part) : IEntries
    {
        public double this[int entry] => stepper.At(entry, part);
    }
}

using MathNet.Numerics.RootFinding;

namespace FlowCalc.Discharge;

/// <summary>Writes a discharge down while it runs: samples, times asked for, peaks, and the books of mass.</summary>
internal sealed class DischargeTrace
{
    readonly DischargeProblem problem;
    readonly LineGeometry geometry;
    readonly StateVector vector;
    readonly double charge;
    readonly double[] thresholds;
    readonly double[] velocityChange;
    readonly double[] before;
    readonly double[] peakRunFlow;
    int next;
    double startPressure = double.NaN;
    double startVolume;
    double massDefect;
    double peakFullFlow;
    double peakDrive;
    double exponent = double.NaN;
    bool isBlind;

    /// <summary>Starts the record of a problem.</summary>
    public DischargeTrace(DischargeProblem problem, LineGeometry geometry, LineState line, StateVector vector)
    {
        (this.problem, this.geometry, this.vector) = (problem, geometry, vector);
        Samples = problem.IsBrief ? null : new SampleStore(problem, line);
        charge = problem.Liquid.ReferenceDensity * problem.LiquidVolume * problem.Count;
        thresholds = new double[problem.Thresholds.Length];
        Array.Fill(thresholds, double.NaN);
        velocityChange = new double[problem.Network.Nozzles.Length];
        before = new double[problem.Network.Count];
        peakRunFlow = new double[problem.Network.Count];
    }

    /// <summary>The curves; null where none are asked.</summary>
    public SampleStore? Samples { get; }

    /// <summary>When the dip tube uncovered, s; NaN before.</summary>
    public double LiquidEnd { get; private set; } = double.NaN;

    /// <summary>Greatest flow out of the bottles so far, kg/s.</summary>
    public double PeakFlow { get; private set; }

    /// <summary>When the masses asked for were out, s; NaN where they are not yet.</summary>
    public ReadOnlySpan<double> Thresholds => thresholds;

    /// <summary>Goes on from what was written down of another discharge until its line was filled.</summary>
    /// <param name="filled">That moment.</param>
    public void GoOn(FilledLine filled)
    {
        PeakFlow = filled.PeakFlow;
        filled.Thresholds.CopyTo(thresholds, 0);
        while (next < thresholds.Length && !double.IsNaN(thresholds[next])) next++;
    }

    /// <summary>The dip tube has uncovered.</summary>
    /// <param name="time">Now, s.</param>
    /// <param name="isBlind">True where it never was covered.</param>
    public void Uncover(double time, bool isBlind) => (LiquidEnd, this.isBlind) = (time, isBlind);

    /// <summary>Writes an instant down.</summary>
    /// <param name="time">Now, s.</param>
    /// <param name="y">State.</param>
    /// <param name="rates">The right-hand side, last called for this instant.</param>
    /// <param name="rate">Its rates.</param>
    public void Add(double time, Span<double> y, DischargeRates rates, ReadOnlySpan<double> rate)
    {
        PeakFlow = Math.Max(PeakFlow, rates.LiquidFlow);
        var pressure = rates.BottlePressure;
        if (double.IsNaN(startPressure)) (startPressure, startVolume) = (pressure, y[StateVector.GasVolume]);
        if (double.IsNaN(LiquidEnd) || time == LiquidEnd) exponent = Exponent(pressure, y[StateVector.GasVolume]);
        var density = problem.Liquid.ReferenceDensity;
        var delivered = vector.DeliveredOf(y).ToArray();
        massDefect = Math.Max(massDefect, Math.Abs(charge - density * (problem.Count * BottleVolume(y[StateVector.GasVolume]) + LineVolume(y)) - Sum(delivered)) / charge);
        var flow = rate.Slice(StateVector.Delivered, delivered.Length).ToArray();
        var total = Sum(flow);
        if (total > peakFullFlow && !rates.IsUncovered)
        {
            (peakFullFlow, peakDrive) = (total, pressure);
            Array.Clear(peakRunFlow);
            for (var k = 0; k < rates.Tree.Runs.Length; k++)
                if (rates.Tree.Runs[k] >= 0) peakRunFlow[rates.Tree.Runs[k]] = rates.Tree.State.Flow[k];
        }
        Samples?.Add(time, pressure, y[StateVector.GasTemperature], BottleVolume(y[StateVector.GasVolume]), flow, delivered);
    }

    /// <summary>Keeps the flows of a phase that ends.</summary>
    /// <param name="tree">What is wetted in it.</param>
    public void Leave(WettedTree tree)
    {
        Array.Clear(before);
        for (var k = 0; k < tree.Runs.Length; k++)
            if (tree.Runs[k] >= 0) before[tree.Runs[k]] = tree.State.Flow[k];
    }

    /// <summary>Books how much slower the liquid becomes that has just met a nozzle.</summary>
    /// <param name="met">Runs that it fills; emptied.</param>
    /// <param name="tree">What is wetted now, solved.</param>
    public void Meet(List<int> met, WettedTree tree)
    {
        foreach (var run in met)
        {
            var slower = before[run] - tree.State.Flow[Array.IndexOf(tree.Runs, run)];
            velocityChange[geometry.NozzleOf[run]] = Math.Max(slower, 0) / (problem.Liquid.ReferenceDensity * problem.Area[run]);
        }
        met.Clear();
    }

    /// <summary>Looks through the part of a step that is kept for the masses asked for.</summary>
    public void Pass(EmbeddedStep stepper, double time, double step, double part)
    {
        while (next < thresholds.Length && Past(stepper, part) >= 0)
        {
            var at = Past(stepper, 0) >= 0 ? 0 : Brent.FindRoot(x => Past(stepper, x), 0, part, 1e-13, 100);
            thresholds[next++] = time + at * step;
        }
    }

    /// <summary>Writes down the end of a flow that has stopped.</summary>
    /// <param name="time">Now, s.</param>
    /// <param name="y">State.</param>
    public void Stop(double time, Span<double> y)
    {
        var delivered = vector.DeliveredOf(y).ToArray();
        var gasVolume = y[StateVector.GasVolume];
        var pressure = problem.Cushion.At(y[StateVector.GasTemperature], y[StateVector.GasMass] / gasVolume).Pressure;
        Samples?.Add(time, pressure, y[StateVector.GasTemperature], BottleVolume(gasVolume), new double[delivered.Length], delivered);
    }

    /// <summary>Closes the record.</summary>
    public DischargeCourse Close(double time, Span<double> y, StopReason reason, LineEvents events, int steps)
    {
        var density = problem.Liquid.ReferenceDensity;
        return new DischargeCourse
        {
            LiquidEnd = isBlind ? double.NaN : LiquidEnd,
            End = time,
            Reason = reason,
            Thresholds = thresholds,
            Arrival = events.Arrival,
            NozzleLiquidEnd = events.LiquidEnd,
            Delivered = vector.DeliveredOf(y).ToArray(),
            VelocityChange = velocityChange,
            PeakNozzleFlow = Samples?.PeakFlow ?? 0,
            PeakFlow = PeakFlow,
            PeakFullFlow = peakFullFlow,
            PeakRunFlow = peakRunFlow,
            PeakDrive = peakDrive,
            LeftInBottle = density * problem.Count * BottleVolume(y[StateVector.GasVolume]),
            LeftInTubes = density * LineVolume(y),
            GasLeft = y[StateVector.GasMass],
            MassDefect = massDefect,
            EffectiveExponent = exponent,
            Steps = steps,
            Samples = Samples?.ToArray() ?? [],
        };
    }

    double Past(EmbeddedStep stepper, double part)
    {
        double sum = 0;
        for (var i = 0; i < velocityChange.Length; i++) sum += stepper.At(StateVector.Delivered + i, part);
        return sum - problem.Thresholds[next];
    }

    /// <summary>Liquid in one bottle, without its dip tube.</summary>
    /// <param name="gasVolume">Volume of its gas, m³.</param>
    /// <returns>Volume, m³.</returns>
    public double BottleVolume(double gasVolume) =>
        isBlind ? problem.LiquidVolume
        : double.IsNaN(LiquidEnd) ? problem.BottleVolume - gasVolume - problem.Volume[0] / problem.Count
        : problem.VolumeLeft;

    double LineVolume(Span<double> y)
    {
        var heads = vector.HeadsOf(y);
        var tails = vector.TailsOf(y);
        double sum = 0;
        for (var j = 0; j < heads.Length; j++)
            sum += problem.Volume[j] * (heads[j] - tails[j] * (1 - problem.Film));
        return sum;
    }

    double Exponent(double pressure, double volume) =>
        volume > startVolume ? Math.Log(startPressure / pressure) / Math.Log(volume / startVolume) : double.NaN;

    static double Sum(double[] values)
    {
        double sum = 0;
        foreach (var value in values) sum += value;
        return sum;
    }
}

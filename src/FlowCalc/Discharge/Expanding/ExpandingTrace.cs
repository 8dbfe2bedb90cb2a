using MathNet.Numerics.RootFinding;

namespace FlowCalc.Discharge;

/// <summary>Writes an expanding discharge down while it runs.</summary>
internal sealed class ExpandingTrace
{
    // Beyond, every second sample goes.
    const int MostSamples = 400;

    readonly ExpandingProblem problem;
    readonly ExpandingLine line;
    readonly ExpandingRates rates;
    readonly double charge;
    readonly double[] thresholds, liquidEnd;
    readonly List<DischargeSample> samples = [];
    int next;
    double massDefect, peakNozzles, peakInLine, peakFull, peakDrive;
    double[] peakRuns = [], peakSound = [];

    /// <summary>Starts the record.</summary>
    public ExpandingTrace(ExpandingProblem problem, ExpandingLine line, ExpandingRates rates)
    {
        (this.problem, this.line, this.rates) = (problem, line, rates);
        charge = problem.Bottle.Charge * problem.Count;
        thresholds = Unknown(problem.Thresholds.Length);
        (Arrival, liquidEnd) = (Unknown(problem.Network.Nozzles.Length), Unknown(problem.Network.Nozzles.Length));
    }

    /// <summary>When agent came to each nozzle, s; NaN where it has not.</summary>
    public double[] Arrival { get; }

    /// <summary>When the outlet began to draw gas, s; NaN where it never drew liquid, or still does.</summary>
    public double LiquidEnd { get; set; } = double.NaN;

    /// <summary>Greatest flow into the line so far, kg/s.</summary>
    public double PeakFlow { get; private set; }

    /// <summary>Writes an instant down.</summary>
    /// <param name="time">Now, s.</param>
    /// <param name="y">State.</param>
    /// <param name="rate">Its rates.</param>
    public void Add(double time, ReadOnlySpan<double> y, ReadOnlySpan<double> rate)
    {
        var draw = rates.Last;
        PeakFlow = Math.Max(PeakFlow, line.Flow);
        peakInLine = Math.Max(peakInLine, y[rates.InLine]);
        var delivered = y.Slice(rates.Delivered, Arrival.Length).ToArray();
        var flow = rate.Slice(rates.Delivered, Arrival.Length).ToArray();
        var agent = problem.Bottle.Agent(y[..problem.Bottle.Length]) * problem.Count;
        massDefect = Math.Max(massDefect, Math.Abs(charge - agent - y[rates.InLine] - delivered.Sum()) / charge);
        var sum = flow.Sum();
        peakNozzles = Math.Max(peakNozzles, sum);
        if (problem.IsBrief) return;
        if (sum > peakFull && rates.Stage == ExpandingStage.Liquid) AtPeak(sum, draw);
        if (samples.Count >= MostSamples) Thin();
        var pressures = new double[flow.Length];
        for (var i = 0; i < flow.Length; i++) pressures[i] = flow[i] > 0 ? line.NozzlePressure(i) : problem.Ambient;
        samples.Add(new(time, draw.Pressure, draw.GasTemperature, agent, flow, pressures, delivered));
    }

    /// <summary>Looks through the part of a step that is kept for the masses asked for.</summary>
    /// <param name="stepper">The step.</param>
    /// <param name="time">Its start, s.</param>
    /// <param name="step">Its size, s.</param>
    /// <param name="part">What is kept of it.</param>
    public void Pass(RungeKuttaStep stepper, double time, double step, double part)
    {
        double Out(double at)
        {
            double sum = 0;
            for (var i = 0; i < Arrival.Length; i++) sum += stepper.At(rates.Delivered + i, at);
            return sum;
        }

        while (next < thresholds.Length && Out(part) >= problem.Thresholds[next])
        {
            var asked = problem.Thresholds[next];
            thresholds[next++] = Out(0) >= asked ? time : time + step * Brent.FindRoot(at => Out(at) - asked, 0, part, 1e-10, 100);
        }
    }

    /// <summary>The outlet has begun to draw gas.</summary>
    /// <param name="time">Now, s.</param>
    /// <param name="passage">Time from the bottle to each nozzle, s.</param>
    public void StartSweep(double time, double[] passage)
    {
        for (var i = 0; i < liquidEnd.Length; i++) liquidEnd[i] = double.IsFinite(passage[i]) && !double.IsNaN(Arrival[i]) ? time + passage[i] : double.NaN;
    }

    /// <summary>What the discharge gave.</summary>
    /// <param name="time">Its end, s.</param>
    /// <param name="y">State then.</param>
    /// <param name="reason">Why it ended.</param>
    /// <param name="steps">Steps taken.</param>
    public DischargeCourse Close(double time, ReadOnlySpan<double> y, StopReason reason, int steps) => new()
    {
        LiquidEnd = LiquidEnd,
        End = time,
        Reason = reason,
        Thresholds = thresholds,
        Arrival = Arrival,
        NozzleLiquidEnd = liquidEnd,
        Delivered = y.Slice(rates.Delivered, Arrival.Length).ToArray(),
        VelocityChange = new double[Arrival.Length],
        PeakNozzleFlow = peakNozzles,
        PeakFlow = PeakFlow,
        LeftInBottle = problem.Bottle.Agent(y[..problem.Bottle.Length]) * problem.Count,
        LeftInTubes = y[rates.InLine],
        PeakInLine = peakInLine,
        PeakFullFlow = peakFull,
        PeakDrive = peakDrive,
        PeakRunFlow = peakRuns,
        PeakSoundSpeed = peakSound,
        MassDefect = massDefect,
        Steps = steps,
        Samples = [.. samples],
    };

    void AtPeak(double flow, in Draw draw)
    {
        (peakFull, peakDrive, peakSound) = (flow, rates.Drive(draw), line.SoundSpeed(rates.Table));
        peakRuns = new double[problem.Network.Count];
        for (var j = 0; j < peakRuns.Length; j++) peakRuns[j] = line.RunFlow(j);
    }

    void Thin()
    {
        var kept = 1;
        for (var i = 2; i < samples.Count; i += 2) samples[kept++] = samples[i];
        samples.RemoveRange(kept, samples.Count - kept);
    }

    static double[] Unknown(int count)
    {
        var times = new double[count];
        Array.Fill(times, double.NaN);
        return times;
    }
}

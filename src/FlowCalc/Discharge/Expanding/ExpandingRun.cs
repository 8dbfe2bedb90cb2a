using System.Globalization;

namespace FlowCalc.Discharge;

/// <summary>One discharge of a gas or a liquefied gas, from the opening valve to its end.</summary>
/// <remarks>Steps of fourth order, each with tables of the stream for the states that its middle and its end are expected to have; that of the end serves the next one.</remarks>
internal sealed class ExpandingRun
{
    const int MostSteps = 3_000;

    // Of the surroundings' pressure, and of the greatest flow.
    const double EndRatio = 1.01;
    const double AllButStopped = 1e-3;

    const double Rounding = 1e-7;

    // Right above the triple point the steps would only become small.
    const double NearFloor = 1.02;

    // By which a flow may change from the start of a step to its middle.
    const double MostChange = 0.2;

    readonly ExpandingProblem problem;
    readonly ExpandingLine line;
    readonly ExpandingRates rates;
    readonly ExpandingTrace trace;
    readonly TableTrack track;
    readonly StepLimit limit;
    readonly RungeKuttaStep stepper;
    readonly double[] y, ahead, clock, arrivalTime;
    double time, step, sweptFrom;
    bool hadLiquid, isUncovering;
    int steps;

    ExpandingRun(ExpandingProblem problem, CancellationToken cancellation)
    {
        this.problem = problem;
        line = new ExpandingLine(problem);
        rates = new ExpandingRates(problem, line, cancellation);
        trace = new ExpandingTrace(problem, line, rates);
        track = TableTrack.Of(problem, rates);
        limit = new StepLimit(problem, rates);
        stepper = new RungeKuttaStep(rates.Length);
        (y, ahead) = (new double[rates.Length], new double[rates.Length]);
        (clock, arrivalTime) = (new double[problem.Network.Nozzles.Length], new double[problem.Network.Nozzles.Length]);
        Array.Fill(clock, double.NaN);
        Array.Fill(arrivalTime, double.NaN);
    }

    /// <summary>Runs a discharge.</summary>
    /// <param name="problem">The discharge.</param>
    /// <param name="cancellation">Asked at every solve of the line.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static DischargeCourse Of(ExpandingProblem problem, CancellationToken cancellation) => new ExpandingRun(problem, cancellation).Run();

    DischargeCourse Run()
    {
        var bottle = problem.Bottle;
        bottle.Start(y.AsSpan(0, bottle.Length));
        if (!bottle.TryDraw(y.AsSpan(0, bottle.Length), isLiquid: true, out var first)) return Failed("The bottle's contents are outside their data.");
        rates.Stage = first.LiquidVolume > 0 && first.LiquidVolume <= problem.VolumeLeft ? ExpandingStage.Gas : ExpandingStage.Liquid;
        hadLiquid = rates.Stage == ExpandingStage.Liquid && first.LiquidVolume > 0;
        step = 1e-3;
        while (steps++ < MostSteps)
        {
            if (Prepare() is { } failure) return Failed(failure);
            trace.Add(time, y, stepper.StartRates);
            if (Ending() is { } reason) return trace.Close(time, y, reason, steps);
            if (!Advance()) return Failed(rates.Failure ?? string.Create(CultureInfo.InvariantCulture, $"The discharge cannot be followed beyond {time:G6} s: its steps became too small."));
        }
        return Failed($"The discharge was not over after {MostSteps} steps.");
    }

    // Table, rates at the start and size of the next step.
    string? Prepare()
    {
        if (rates.Table is null) track.Clear();
        if (rates.Stage != ExpandingStage.Sweep)
        {
            if (track.Now(y) is not { } table) return "The agent has no state somewhere on its way to the nozzles within its data.";
            rates.Table = table;
        }
        rates.Step = step;
        if (double.IsNaN(clock[0]) && SetClock() is { } failure) return failure;
        if (!rates.Fill(time, y, stepper.StartRates)) return rates.Failure;
        var largest = limit.Largest(time, y, stepper.StartRates);
        step = Math.Min(step, largest);
        if (step < rates.Step && !Resized()) return rates.Failure;
        if (rates.Stage != ExpandingStage.Sweep) track.Reach(y, stepper.StartRates, step, largest);
        return null;
    }

    // Agent that has left the bottles when it comes to each nozzle, at the flow of the open valve.
    string? SetClock()
    {
        if (!rates.TrySolve(y, problem.OpeningTime)) return rates.Failure;
        if (!(line.Flow > 0) || !problem.Bottle.TryDraw(y.AsSpan(0, problem.Bottle.Length), rates.IsLiquid, out var draw)) return null;
        var flow = line.Flow * draw.AgentPart;
        var passage = line.Passage(rates.Table);
        for (var i = 0; i < clock.Length; i++)
        {
            clock[i] = flow * passage[i];
            if (clock[i] == 0) Arrive(i);
        }
        return null;
    }

    void Arrive(int nozzle)
    {
        if (rates.HasArrived[nozzle]) return;
        rates.HasArrived[nozzle] = true;
        trace.Arrival[nozzle] = time;
    }

    StopReason? Ending()
    {
        var draw = rates.Last;
        if (rates.Drive(draw) <= EndRatio * problem.Ambient * (1 + Rounding)) return StopReason.Equalised;
        if (draw.Pressure <= problem.FloorPressure * NearFloor) return StopReason.TriplePoint;
        var isStarting = time <= problem.OpeningTime;
        return !isStarting && line.Flow <= AllButStopped * trace.PeakFlow ? StopReason.FlowStopped : null;
    }

    bool Advance()
    {
        var isFirst = true;
        while (step > 1e-9 * Math.Max(time, 1e-3))
        {
            var isLanding = time < problem.OpeningTime && time + step >= problem.OpeningTime;
            if (isLanding) step = problem.OpeningTime - time;
            stepper.Begin(y, step);
            // What is quicker than the step is told by its size, at its start too.
            if (rates.Step != step && !(isFirst ? Resized() : Filled())) return false;
            isFirst = false;
            var table = rates.Table;
            if (!TryStages() || double.IsPositiveInfinity(DriveAt(1)) || HasChanged())
            {
                step *= 0.5;
                rates.Table = table;
                continue;
            }
            var part = FirstEvent();
            trace.Pass(stepper, time, step, part);
            stepper.At(part, y);
            time = isLanding && part == 1 ? problem.OpeningTime : time + part * step;
            Switch();
            if (part == 1) step *= 2;
            return true;
        }
        return false;
    }

    bool Resized()
    {
        rates.Step = step;
        return IsPastTheEnd() || rates.Refill(y, stepper.StartRates);
    }

    bool Filled()
    {
        rates.Step = step;
        return rates.Fill(time, y, stepper.StartRates);
    }

    // The rates in the middle, twice, and at the end.
    bool TryStages()
    {
        stepper.Ahead(stepper.StartRates, 0.5, ahead);
        TakeTableAhead(mayMake: true);
        if (!TryStage(0.5, stepper.MiddleRates)) return false;
        stepper.Ahead(stepper.MiddleRates, 0.5, ahead);
        TakeTableAhead(mayMake: false);
        if (!TryStage(0.5, stepper.SecondMiddleRates)) return false;
        stepper.Ahead(stepper.SecondMiddleRates, 1, ahead);
        TakeTableAhead(mayMake: true);
        return TryStage(1, stepper.EndRates);
    }

    bool TryStage(double part, Span<double> into) => rates.Fill(time + part * step, ahead, into) && !IsPastTheEnd();

    // Past an end of the liquid there is no stream of this kind ahead; then the last table serves.
    void TakeTableAhead(bool mayMake)
    {
        if (rates.Stage != ExpandingStage.Sweep && track.Ahead(ahead, y, mayMake) is { } table) rates.Table = table;
    }

    bool IsPastTheEnd() => rates.Drive(rates.Last) <= problem.Ambient * (1 + Rounding);

    // A flow that jumps within a step, other than by the opening of the valve, is followed more closely.
    bool HasChanged() =>
        rates.Stage != ExpandingStage.Sweep && time > problem.OpeningTime && step > 1e-4
        && Math.Abs(stepper.MiddleRates[rates.Out] - stepper.StartRates[rates.Out]) > MostChange * Math.Max(stepper.StartRates[rates.Out], 0.05 * trace.PeakFlow);

    // Part of the step after which something changes; 1 where nothing does.
    double FirstEvent()
    {
        double first = 1;
        for (var i = 0; i < clock.Length; i++)
            if (!rates.HasArrived[i] && IsAtNozzle(i, 1)) first = Math.Min(first, Root(part => IsAtNozzle(i, part) ? 1 : -1, 1));
        var uncovered = rates.Stage == ExpandingStage.Liquid && IsUncovered(1) && !IsUncovered(0) ? Root(part => IsUncovered(part) ? 1 : -1, 1) : double.PositiveInfinity;
        first = Math.Min(first, uncovered);
        if (rates.Stage == ExpandingStage.Sweep && Swept(1) >= rates.SweptMass) first = Math.Min(first, Root(part => Swept(part) - rates.SweptMass, first));
        if (DriveAt(1) <= EndRatio * problem.Ambient) first = Math.Min(first, Root(part => EndRatio * problem.Ambient - DriveAt(part), first));
        // The state that is found there may be a last digit short of it.
        isUncovering = uncovered <= first;
        return first;
    }

    // Behind the end of the liquid the front is moved by gas, whose mass says nothing of it.
    bool IsAtNozzle(int nozzle, double part) =>
        double.IsNaN(arrivalTime[nozzle]) ? stepper.At(rates.Out, part) >= clock[nozzle] : time + part * step >= arrivalTime[nozzle];

    double DriveAt(double part) => TryDrawAt(part, rates.IsLiquid, out var draw) ? rates.Drive(draw) : double.PositiveInfinity;

    bool TryDrawAt(double part, bool isLiquid, out Draw draw)
    {
        Span<double> state = stackalloc double[problem.Bottle.Length];
        stepper.At(part, state);
        return problem.Bottle.TryDraw(state, isLiquid, out draw);
    }

    // Bisection: some of these only know on which side they are.
    static double Root(Func<double, double> past, double high)
    {
        double low = 0;
        if (past(high) < 0) return 1;
        for (var i = 0; i < 40; i++)
        {
            var middle = 0.5 * (low + high);
            if (past(middle) >= 0) high = middle;
            else low = middle;
        }
        return high;
    }

    bool IsUncovered(double part) => hadLiquid && TryDrawAt(part, isLiquid: true, out var draw) && draw.LiquidVolume <= problem.VolumeLeft;

    double Delivered()
    {
        double sum = 0;
        for (var i = 0; i < clock.Length; i++) sum += y[rates.Delivered + i];
        return sum;
    }

    double Swept(double part)
    {
        double sum = 0;
        for (var i = 0; i < clock.Length; i++) sum += stepper.At(rates.Delivered + i, part);
        return sum - sweptFrom;
    }

    void Switch()
    {
        for (var i = 0; i < clock.Length; i++)
            if (double.IsNaN(arrivalTime[i]) ? y[rates.Out] >= clock[i] * (1 - 1e-12) : time >= arrivalTime[i] * (1 - 1e-12)) Arrive(i);
        var length = problem.Bottle.Length;
        if (rates.Stage == ExpandingStage.Liquid && problem.Bottle.TryDraw(y.AsSpan(0, length), isLiquid: true, out var draw))
        {
            // A gas that begins to condense keeps its outlet in gas.
            if (draw.LiquidVolume > 0 && draw.LiquidVolume <= problem.VolumeLeft && !hadLiquid) (rates.Stage, rates.Table) = (ExpandingStage.Gas, null!);
            else if (isUncovering || hadLiquid && draw.LiquidVolume <= problem.VolumeLeft * (1 + 1e-9) + 1e-12) StartSweep(draw);
            hadLiquid |= draw.LiquidVolume > problem.VolumeLeft;
        }
        else if (rates.Stage == ExpandingStage.Sweep && Delivered() - sweptFrom >= rates.SweptMass * (1 - 1e-9))
        {
            rates.Stage = ExpandingStage.Gas;
            rates.Table = null!;
        }
    }

    void StartSweep(in Draw draw)
    {
        trace.LiquidEnd = time;
        // What is driven out is what stands in the line, not what the step would have come to.
        rates.Table = track.Now(y) ?? rates.Table;
        (rates.SweptMass, rates.SweptPart) = (y[rates.InLine], draw.AgentPart);
        for (var i = 0; i < clock.Length; i++)
            if (!rates.HasArrived[i] && line.Flow > 0) arrivalTime[i] = time + (clock[i] - y[rates.Out]) / (line.Flow * draw.AgentPart);
        sweptFrom = Delivered();
        trace.StartSweep(time, line.Passage(rates.Table));
        var drive = rates.Drive(draw);
        var gas = problem.Bottle.Stream(y.AsSpan(0, problem.Bottle.Length), isLiquid: false, 0.5 * problem.Ambient)?.At(0.999 * drive).Density ?? double.NaN;
        var agent = rates.Table.At(Math.Log(drive)).Density;
        rates.GasRatio = gas > 0 ? gas / agent : 0;
        rates.Stage = rates.SweptMass > 0 ? ExpandingStage.Sweep : ExpandingStage.Gas;
        if (rates.Stage == ExpandingStage.Gas) rates.Table = null!;
        step = Math.Min(step, Math.Max(0.05, 1e-4 * time));
    }

    static DischargeCourse Failed(string failure) => new() { Failure = failure };
}

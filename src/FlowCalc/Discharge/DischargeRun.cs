using System.Globalization;

namespace FlowCalc.Discharge;

/// <summary>One discharge from the opening valve to its end: adaptive steps between the moments at which the line changes.</summary>
internal sealed class DischargeRun
{
    const int MostSteps = 20_000;

    // Of the greatest flow: where less liquid moves and no gas leaves, what little comes is added in closed form.
    const double AllButStopped = 1e-3;

    // A step that shuts air in to within this of the greatest flow has settled its front.
    const double Held = 1e-5;

    readonly DischargeProblem problem;
    readonly LineGeometry geometry;
    readonly LineState line;
    readonly StateVector vector;
    readonly DischargeRates rates;
    readonly LineEvents events;
    readonly CrossingSearch search;
    readonly EmbeddedStep stepper;
    readonly DischargeTrace trace;
    readonly List<Crossing> crossings = [];
    readonly double[] y;
    readonly double[] scale;
    FilledLine? filled;
    double time;
    double step;
    int steps;

    DischargeRun(DischargeProblem problem, CancellationToken cancellation)
    {
        this.problem = problem;
        geometry = new LineGeometry(problem);
        line = new LineState(problem.Network.Count);
        vector = new StateVector(problem.Network.Nozzles.Length, problem.Network.Count);
        rates = new DischargeRates(problem, geometry, line, vector, cancellation);
        events = new LineEvents(problem, geometry, line);
        search = new CrossingSearch(problem, line, vector);
        stepper = new EmbeddedStep(problem.Pair, vector.Length);
        (y, scale) = (new double[vector.Length], new double[vector.Length]);
        trace = new DischargeTrace(problem, geometry, line, vector);
    }

    /// <summary>Runs a discharge.</summary>
    /// <param name="problem">The discharge.</param>
    /// <param name="cancellation">Asked at every solve of the line.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static DischargeCourse Of(DischargeProblem problem, CancellationToken cancellation) => new DischargeRun(problem, cancellation).Run();

    /// <summary>Follows a discharge on from the filled line of another that differs only in the model's choices.</summary>
    /// <param name="problem">The discharge.</param>
    /// <param name="filled">The other's filled line.</param>
    /// <param name="cancellation">Asked at every solve of the line.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static DischargeCourse From(DischargeProblem problem, FilledLine filled, CancellationToken cancellation)
    {
        var run = new DischargeRun(problem, cancellation);
        run.GoOn(filled);
        return run.Follow();
    }

    DischargeCourse Run()
    {
        Start();
        return Follow();
    }

    DischargeCourse Follow()
    {
        while (steps < MostSteps)
        {
            if (BeginPhase() is { } failure) return Fail(failure);
            if (Ending() is { } ended) return Finish(ended);
            if (RunPhase(out var stopped) is { } broken) return Fail(broken);
            if (stopped is { } reason) return Finish(reason);
        }
        return Fail($"The discharge was not over after {MostSteps} steps.");
    }

    void Start()
    {
        y[StateVector.GasVolume] = problem.BottleVolume - problem.LiquidVolume;
        y[StateVector.GasTemperature] = y[StateVector.WallTemperature] = problem.Cushion.Temperature;
        y[StateVector.GasMass] = problem.Cushion.Density * y[StateVector.GasVolume];
        AllowedError.Fill(scale, problem, vector, y);
        var isBlind = y[StateVector.GasVolume] >= problem.UncoveringVolume;
        events.Open(isBlind);
        if (isBlind) Uncover(isBlind);
    }

    void GoOn(FilledLine from)
    {
        filled = from;
        time = from.Time;
        from.State.CopyTo(y, 0);
        line.CopyFrom(from.Line);
        from.Arrival.CopyTo(events.Arrival, 0);
        trace.GoOn(from);
        AllowedError.Fill(scale, problem, vector, y);
    }

    // No front is left that could move, and the valve is open.
    void KeepFilledLine()
    {
        if (filled is not null || problem.IsBrief || rates.IsUncovered || time < problem.OpeningTime) return;
        foreach (var outlet in rates.Tree.Outlets)
            if (outlet.Nozzle < 0) return;
        var copy = new LineState(problem.Network.Count);
        copy.CopyFrom(line);
        filled = new(time, [.. y], copy, [.. events.Arrival], [.. trace.Thresholds], trace.PeakFlow);
    }

    void Uncover(bool isBlind)
    {
        rates.IsUncovered = true;
        trace.Uncover(time, isBlind);
        events.Uncover(time);
    }

    string? BeginPhase()
    {
        line.Head.CopyTo(vector.HeadsOf(y));
        line.Tail.CopyTo(vector.TailsOf(y));
        rates.IsGasOut = events.IsGasOut;
        rates.Tree = WettedTree.Of(problem, geometry, line);
        stepper.Restart();
        if (!rates.Fill(time, y, stepper.StartRates)) return rates.Failure;
        trace.Meet(events.Met, rates.Tree);
        search.List(rates.Tree, time, rates.IsUncovered, rates.IsGasOut, crossings);
        trace.Add(time, y, rates, stepper.StartRates);
        step = search.FirstStep(crossings, time, y, stepper.StartRates);
        KeepFilledLine();
        return null;
    }

    StopReason? Ending()
    {
        if (rates.IsGasOut) return search.HasCome(new(CrossingKind.Equalised, 0), time, y) ? StopReason.Equalised : null;
        var isStarting = time <= problem.OpeningTime;
        return rates.LiquidFlow <= AllButStopped * trace.PeakFlow && !(isStarting && rates.LiquidFlow > 0) ? StopReason.FlowStopped : null;
    }

    string? RunPhase(out StopReason? stopped)
    {
        stopped = null;
        for (; steps < MostSteps; steps++)
        {
            if (!(step > 1e-13 * Math.Max(time, 1e-3)))
                return rates.Failure ?? string.Create(CultureInfo.InvariantCulture, $"The discharge cannot be followed beyond {time:G6} s: its steps became too small.");
            // What the opening valve does to the flow has no slope at its end.
            var isLanding = time < problem.OpeningTime && time + step >= problem.OpeningTime;
            if (isLanding) step = problem.OpeningTime - time;
            var error = stepper.Try(rates.Fill, time, y, step, scale);
            if (!(error <= 1))
            {
                step *= double.IsNaN(error) ? 0.25 : Math.Clamp(problem.Pair.Stretch(error), 0.1, 0.9);
                continue;
            }
            rates.Forget();
            var part = search.First(crossings, stepper, time, step);
            trace.Pass(stepper, time, step, part);
            trace.Samples?.AddWithin(stepper, trace, time, part);
            if (part < 1)
            {
                stepper.At(part, y);
                time += part * step;
                Cross();
                steps++;
                return null;
            }
            time = isLanding ? problem.OpeningTime : time + step;
            stepper.End.CopyTo(y);
            stepper.Take();
            trace.Add(time, y, rates, stepper.StartRates);
            step = Math.Min(step * Math.Clamp(problem.Pair.Stretch(Math.Max(error, 1e-10)), 0.2, 5), 4 * search.FirstStep(crossings, time, y, stepper.StartRates));
            stopped = Ending();
            if (stopped == StopReason.FlowStopped) RunOut();
            if (stopped is not null || HoldShutAir() || IsAnyHere())
            {
                if (stopped is null) Cross();
                steps++;
                return null;
            }
        }
        return null;
    }

    bool IsAnyHere()
    {
        foreach (var crossing in crossings)
            if (search.HasCome(crossing, time, y)) return true;
        return false;
    }

    void Cross()
    {
        trace.Leave(rates.Tree);
        vector.HeadsOf(y).CopyTo(line.Head);
        vector.TailsOf(y).CopyTo(line.Tail);
        foreach (var crossing in crossings)
        {
            if (!search.HasCome(crossing, time, y)) continue;
            if (crossing.Kind == CrossingKind.LiquidAtEnd) events.LiquidAtEnd(crossing.Run, time);
            else if (crossing.Kind == CrossingKind.GasAtEnd) events.GasAtEnd(crossing.Run, time);
            else if (crossing.Kind == CrossingKind.Uncovered) Uncover(isBlind: false);
        }
    }

    bool HoldShutAir()
    {
        var isAny = false;
        foreach (var outlet in rates.Tree.Outlets)
        {
            if (outlet.Nozzle >= 0 || line.ShutAir[outlet.Run] == 0 || rates.Tree.State.Flow[outlet.Point] > Held * trace.PeakFlow) continue;
            line.IsHeld[outlet.Run] = isAny = true;
        }
        return isAny;
    }

    DischargeCourse Finish(StopReason reason)
    {
        vector.HeadsOf(y).CopyTo(line.Head);
        vector.TailsOf(y).CopyTo(line.Tail);
        return trace.Close(time, y, reason, events, steps) with { Filled = filled };
    }

    // Near its end the flow falls in a straight line, since the pressure that is left falls with the square of the time that is left.
    void RunOut()
    {
        const double Late = 0.9;
        var now = stepper.StartRates[StateVector.GasVolume];
        var lately = (y[StateVector.GasVolume] - stepper.At(StateVector.GasVolume, Late)) / ((1 - Late) * stepper.Size);
        var left = 0.5 * (1 - Late) * stepper.Size * now / (lately - now);
        if (!(left > 0 && left < time)) return;
        var start = stepper.StartRates;
        // The flow falls to nothing over the time left, so that half as much moves as at the present flow; but no front beyond its run's end, and no more than is left in the bottle.
        var moved = search.Reach(crossings, time, y, start, 0.5 * left);
        time += left * (1 - Math.Sqrt(1 - moved / (0.5 * left)));
        for (var i = 0; i < y.Length; i++) y[i] += moved * start[i];
        trace.Stop(time, y);
    }

    static DischargeCourse Fail(string failure) => new() { Failure = failure };
}

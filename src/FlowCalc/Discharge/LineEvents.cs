namespace FlowCalc.Discharge;

/// <summary>What happens in the line when a front comes to an end: the next runs are entered, nozzles start, gas breaks through.</summary>
internal sealed class LineEvents
{
    readonly DischargeProblem problem;
    readonly LineGeometry geometry;
    readonly LineState line;
    readonly int[] firstChild;
    readonly int[] nextChild;
    readonly Stack<(int Run, bool IsGas, bool IsAtEnd)> waiting = new();

    /// <summary>Makes the events of a line.</summary>
    public LineEvents(DischargeProblem problem, LineGeometry geometry, LineState line)
    {
        (this.problem, this.geometry, this.line) = (problem, geometry, line);
        var network = geometry.Network;
        (firstChild, nextChild) = (new int[network.Count], new int[network.Count]);
        Array.Fill(firstChild, -1);
        for (var j = network.Count - 1; j > 0; j--)
            (nextChild[j], firstChild[network.Parent[j]]) = (firstChild[network.Parent[j]], j);
        Arrival = Unknown(network.Nozzles.Length);
        LiquidEnd = Unknown(network.Nozzles.Length);
    }

    /// <summary>When liquid came to each nozzle, s; NaN where it has not.</summary>
    public double[] Arrival { get; }

    /// <summary>When gas came to each nozzle, s; NaN where it has not.</summary>
    public double[] LiquidEnd { get; }

    /// <summary>Whether gas leaves by any nozzle.</summary>
    public bool IsGasOut { get; private set; }

    /// <summary>Runs whose liquid has just met its nozzle.</summary>
    public List<int> Met { get; } = [];

    /// <summary>The valve begins to open.</summary>
    /// <param name="isBlind">False where liquid stands at the outlet, true where the dip tube holds gas.</param>
    public void Open(bool isBlind)
    {
        line.IsReached[0] = true;
        if (!isBlind) HandleAll(0, isGas: false, isAtEnd: true, 0);
    }

    /// <summary>Gas enters the dip tube.</summary>
    /// <param name="time">Now, s.</param>
    public void Uncover(double time) => HandleAll(0, isGas: true, isAtEnd: false, time);

    /// <summary>A front of liquid has come to a run's end.</summary>
    public void LiquidAtEnd(int run, double time) => HandleAll(run, isGas: false, isAtEnd: true, time);

    /// <summary>A front of gas has come to a run's end, or to the end of the liquid before it.</summary>
    public void GasAtEnd(int run, double time) => HandleAll(run, isGas: true, isAtEnd: true, time);

    void HandleAll(int run, bool isGas, bool isAtEnd, double time)
    {
        waiting.Push((run, isGas, isAtEnd));
        while (waiting.TryPop(out var next))
        {
            switch (next)
            {
                case { IsGas: false, IsAtEnd: false }: Enter(next.Run); break;
                case { IsGas: false }: Arrive(next.Run, time); break;
                case { IsAtEnd: false }: Sweep(next.Run); break;
                default: BreakThrough(next.Run, time); break;
            }
        }
    }

    void Enter(int run)
    {
        line.IsReached[run] = true;
        line.Head[run] = line.Tail[run] = 0;
        if (geometry.NozzleAreaAhead[run] == 0) line.ShutAir[run] = ShutPressure(run) * geometry.VolumeAhead[run];
        if (problem.Volume[run] == 0) waiting.Push((run, false, true));
    }

    // Air in a branch without a nozzle is shut in from the branch's first run on.
    double ShutPressure(int run)
    {
        var above = geometry.Network.Parent[run];
        return line.ShutAir[above] == 0 ? problem.Ambient : line.ShutAir[above] / (geometry.VolumeAhead[above] - problem.Volume[above]);
    }

    void Arrive(int run, double time)
    {
        line.IsFull[run] = true;
        line.Head[run] = 1;
        if (geometry.NozzleOf[run] is >= 0 and var nozzle)
        {
            Arrival[nozzle] = time;
            Met.Add(run);
        }
        for (var child = firstChild[run]; child >= 0; child = nextChild[child]) waiting.Push((child, false, false));
    }

    void Sweep(int run)
    {
        line.IsSwept[run] = true;
        var isEmpty = !line.IsReached[run] || (line.Head[run] <= 0 && !line.IsFull[run]);
        if (isEmpty || problem.Volume[run] == 0) waiting.Push((run, true, true));
    }

    void BreakThrough(int run, double time)
    {
        line.IsReached[run] = line.IsGas[run] = true;
        // A front that the error of a step has left before the run's start keeps what it owes, so that the books balance.
        line.Tail[run] = Math.Max(line.Head[run], 0);
        if (geometry.NozzleOf[run] is >= 0 and var nozzle)
        {
            LiquidEnd[nozzle] = time;
            IsGasOut = true;
        }
        for (var child = firstChild[run]; child >= 0; child = nextChild[child]) waiting.Push((child, true, false));
    }

    static double[] Unknown(int count)
    {
        var times = new double[count];
        Array.Fill(times, double.NaN);
        return times;
    }
}

using FlowCalc.Agents;

namespace FlowCalc.Discharge;

/// <summary>The right-hand side of an expanding discharge. Entries: the bottle's, then agent out of all bottles, agent in the line, and agent out of each nozzle, kg.</summary>
/// <remarks>
/// While the line fills, its flow is that of the full line, and a nozzle gives nothing until the agent has come to it. Afterwards the line holds what a steady
/// flow would; it follows that with the time that the agent takes through it, so that bottle and nozzles may differ in flow.
/// </remarks>
internal sealed class ExpandingRates(ExpandingProblem problem, ExpandingLine line, CancellationToken cancellation)
{
    readonly int bottle = problem.Bottle.Length;
    readonly int nozzles = problem.Network.Nozzles.Length;

    /// <summary>Entry of the agent out of all bottles, kg.</summary>
    public int Out => bottle;

    /// <summary>Entry of the agent in the line, kg.</summary>
    public int InLine => bottle + 1;

    /// <summary>First entry of the agent out of the nozzles, kg.</summary>
    public int Delivered => bottle + 2;

    /// <summary>Number of entries.</summary>
    public int Length => bottle + 2 + nozzles;

    /// <summary>The stream's table for this step.</summary>
    public ExpansionTable Table { get; set; } = null!;

    /// <summary>What leaves.</summary>
    public ExpandingStage Stage { get; set; }

    /// <summary>Whether agent has come to each nozzle.</summary>
    public bool[] HasArrived { get; } = new bool[problem.Network.Nozzles.Length];

    /// <summary>Part of the mass that is agent in what a sweep drives out, 0 to 1.</summary>
    public double SweptPart { get; set; } = 1;

    /// <summary>Agent in the line when its sweep began, kg.</summary>
    public double SweptMass { get; set; }

    /// <summary>Size of the step that the rates are for, s.</summary>
    public double Step { get; set; }

    /// <summary>Why the last call has no answer; null where it has one.</summary>
    public string? Failure { get; private set; }

    /// <summary>What the outlet drew at the last call.</summary>
    public Draw Last { get; private set; }

    /// <summary>Whether the outlet stands in liquid.</summary>
    public bool IsLiquid => Stage == ExpandingStage.Liquid;

    /// <summary>Absolute pressure before the line, Pa.</summary>
    /// <param name="draw">What the outlet draws.</param>
    public double Drive(in Draw draw) => Math.Min(draw.Pressure, problem.SetPressure);

    /// <summary>Rates of change.</summary>
    /// <param name="time">Time since the valve began to open, s.</param>
    /// <param name="y">The state.</param>
    /// <param name="rates">Its rates; overwritten.</param>
    /// <returns>False where there is no answer.</returns>
    public bool Fill(double time, ReadOnlySpan<double> y, Span<double> rates)
    {
        rates.Clear();
        Failure = null;
        if (!problem.Bottle.TryDraw(y[..bottle], IsLiquid, out var draw)) return Fail("The bottle's contents left the range of their data.");
        Last = draw;
        var drive = LineDrive(draw);
        if (drive <= problem.Ambient * (1 + 1e-7)) return true;
        // Gas that comes out of solution may raise the pressure: then a shorter step, with a table of its own, follows it.
        if (Math.Log(drive) > Table.LogTop) return Fail("The pressure in the bottle rises faster than its steps can follow.");
        return line.Solve(Table, drive, time, cancellation) is { } failure ? Fail(failure) : Refill(y, rates);
    }

    /// <summary>Rates of change at the last solved state of the line, for another size of the step.</summary>
    /// <param name="y">The state.</param>
    /// <param name="rates">Its rates; overwritten.</param>
    /// <returns>False where there is no answer.</returns>
    public bool Refill(ReadOnlySpan<double> y, Span<double> rates)
    {
        var draw = Last;
        double steady = line.Flow, delivered = 0;
        // While gas sweeps the line, what leaves the nozzles is still what came before it.
        var part = Stage == ExpandingStage.Sweep ? SweptPart : draw.AgentPart;
        for (var i = 0; i < nozzles; i++)
        {
            rates[Delivered + i] = HasArrived[i] ? line.NozzleFlow(i) * part : 0;
            delivered += rates[Delivered + i];
        }
        var outflow = Outflow(steady, LineDrive(draw), y[InLine] / part);
        rates[Out] = outflow * draw.AgentPart;
        rates[InLine] = rates[Out] - delivered;
        return problem.Bottle.TryRates(y[..bottle], IsLiquid, outflow / problem.Count, Step, rates[..bottle]) || Fail("The bottle's contents left the range of their data.");
    }

    /// <summary>Solves the line alone.</summary>
    /// <param name="y">The state.</param>
    /// <param name="time">Time since the valve began to open, s.</param>
    /// <returns>False where there is no answer.</returns>
    public bool TrySolve(ReadOnlySpan<double> y, double time)
    {
        Failure = null;
        if (!problem.Bottle.TryDraw(y[..bottle], IsLiquid, out var draw)) return Fail("The bottle's contents left the range of their data.");
        return line.Solve(Table, Drive(draw), time, cancellation) is not { } failure || Fail(failure);
    }

    // A sweep keeps the table of what it drives out, whatever comes out of solution behind it.
    double LineDrive(in Draw draw) => Stage == ExpandingStage.Sweep ? Math.Min(Drive(draw), Math.Exp(Table.LogTop)) : Drive(draw);

    double Outflow(double steady, double drive, double inLine)
    {
        if (!(steady > 0)) return steady;
        if (Array.IndexOf(HasArrived, false) >= 0) return Stage == ExpandingStage.Sweep ? steady * GasRatio : steady;
        // Gas follows into the volume that the agent leaves.
        if (Stage == ExpandingStage.Sweep) return Math.Min(steady, steady * Table.At(Math.Log(drive)).Density * TotalVolume / Math.Max(SweptMass, 1e-12) * GasRatio);
        var held = line.Held(Table);
        // What is quicker than the steps need not be followed.
        return held > 0 ? Math.Max(steady + (held - inLine) / Math.Max(held / steady, 0.5 * Step), 0) : steady;
    }

    /// <summary>Density of the gas that follows over the density of the table's stream at the same pressure.</summary>
    public double GasRatio { get; set; } = 1;

    double TotalVolume => problem.Volume.Sum();

    bool Fail(string why)
    {
        Failure = why;
        return false;
    }
}

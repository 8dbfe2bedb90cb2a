using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>What the rules of a flow, a discharge and a cut list look at besides: the tree in both directions.</summary>
abstract class JudgedLayout : JudgedAnswer
{
    readonly LeavingRuns leaving;
    ImmutableArray<Limit>? flowLimits;

    protected JudgedLayout(Layout layout, UnitSystem units, ImmutableArray<Limit> limits, CancellationToken cancellationToken)
        : base(layout, units, limits)
    {
        Cancellation = cancellationToken;
        leaving = LeavingRuns.Of(layout);
        FeedRun = new int[layout.Points.Length];
        FeedRun[leaving.SupplyPoint] = -1;
        for (var run = 0; run < layout.Runs.Length; run++)
        {
            Pass(run);
            FeedRun[layout.Runs[run].To] = run;
        }
    }

    public CancellationToken Cancellation { get; }

    /// <summary>For each point the run that feeds it; -1 for the supply.</summary>
    public int[] FeedRun { get; }

    /// <summary>The runs that leave a point, in the document's order.</summary>
    /// <param name="point">Index of the point.</param>
    public ReadOnlySpan<int> Leaving(int point) => leaving.Of(point);

    /// <summary>Index of the supply point.</summary>
    public int SupplyPoint => leaving.SupplyPoint;

    /// <summary>Asks the token once in a while: what every loop over points, runs or nozzles calls.</summary>
    /// <param name="turn">A count, or an index that moves through the loop.</param>
    public void Pass(int turn)
    {
        if ((turn & 0xFFF) == 0) Cancellation.ThrowIfCancellationRequested();
    }

    /// <summary>A limit of the steady flow, whichever answer is judged.</summary>
    public Limit FlowLimit(string code) => Find(flowLimits ??= DefaultLimits.For(Layout.Limits, LimitUse.Flow), code);

    /// <summary>The highest absolute pressure in the bottle or the held supply, Pa; null where none is known.</summary>
    public virtual double? Reservoir => null;

    public string PointId(int point) => Layout.Points[point].Id;

    public string RunId(int run) => Layout.Runs[run].Id;

    /// <summary>The runs from the supply outwards, each after the run that feeds it.</summary>
    public int[] OutwardRuns()
    {
        var order = new int[Layout.Runs.Length];
        var reached = Append(order, 0, SupplyPoint);
        for (var next = 0; next < reached; next++)
        {
            Pass(next);
            reached = Append(order, reached, Layout.Runs[order[next]].To);
        }
        return order;
    }

    int Append(int[] order, int reached, int point)
    {
        foreach (var run in Leaving(point)) order[reached++] = run;
        return reached;
    }
}

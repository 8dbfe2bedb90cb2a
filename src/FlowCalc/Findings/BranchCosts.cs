namespace FlowCalc.Findings;

/// <summary>What each run costs the nozzles behind it, weighed by the share that they miss.</summary>
/// <remarks>
/// A run is to blame as far as it takes pressure from nozzles that get too little; pressure taken from nozzles that get too much as well is no fault of balance.
/// So each run's loss is weighed by wanted less actual share, summed over everything behind it: upstream, where all nozzles pay alike, the sum tends to nothing.
/// </remarks>
sealed class BranchCosts
{
    readonly FlowCase flowCase;
    readonly double[] missingAt;

    public BranchCosts(FlowCase flowCase)
    {
        this.flowCase = flowCase;
        Outward = flowCase.OutwardRuns();
        missingAt = new double[flowCase.Layout.Points.Length];
        foreach (var nozzle in flowCase.Flow.Nozzles) missingAt[nozzle.Point] = nozzle.WantedShare - nozzle.Share;
        Missing = SumBehind(missingAt);
    }

    /// <summary>The runs from the supply outwards.</summary>
    public int[] Outward { get; }

    /// <summary>For each run the share that the nozzles behind it miss, less what others behind it have too much; dimensionless.</summary>
    public double[] Missing { get; }

    /// <summary>The cost of a run, Pa; below 0 where it holds back nozzles that get too much.</summary>
    public double Of(int run) => Missing[run] * Math.Max(0, flowCase.Flow.Runs[run].Losses.Total.Pascals);

    /// <summary>The runs that cost most, dearest first.</summary>
    public List<int> Dearest(int most)
    {
        var runs = new List<int>();
        for (var run = 0; run < Missing.Length; run++)
        {
            flowCase.Pass(run);
            if (Of(run) > 0) runs.Add(run);
        }
        runs.Sort((first, second) => Of(second).CompareTo(Of(first)) is var order and not 0 ? order : first.CompareTo(second));
        if (runs.Count > most) runs.RemoveRange(most, runs.Count - most);
        return runs;
    }

    /// <summary>Sums what stands at points over everything behind each run.</summary>
    public double[] SumBehind(double[] atPoints)
    {
        var sums = new double[Outward.Length];
        for (var next = Outward.Length - 1; next >= 0; next--)
        {
            flowCase.Pass(next);
            var run = Outward[next];
            sums[run] += atPoints[flowCase.Layout.Runs[run].To];
            if (flowCase.FeedRun[flowCase.Layout.Runs[run].From] is >= 0 and var feed) sums[feed] += sums[run];
        }
        return sums;
    }

    /// <summary>A copy of what each point's nozzle misses.</summary>
    public double[] MissingAtPoints() => (double[])missingAt.Clone();
}

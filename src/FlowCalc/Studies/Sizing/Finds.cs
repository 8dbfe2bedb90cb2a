namespace FlowCalc.Studies.Sizing;

/// <summary>Judges choices by the wish, keeps the best two, and what was left aside without a proof.</summary>
/// <param name="model">The choices.</param>
/// <param name="flows">Solves them.</param>
/// <param name="times">Follows their discharges.</param>
/// <param name="work">Work after which to end.</param>
internal sealed class Finds(SizingModel model, CandidateFlow flows, WishTimes times, int work)
{
    // What is within a wish but for rounding is within it.
    const double Slack = 1e-9;

    // Of choices that are many, one with less than this part of the best one's flow is not followed in search of a shorter time.
    const double NearFlow = 0.97;

    readonly Dictionary<Trial, Trial> timed = [];
    readonly bool needsTime = model.Wish.HasTime || model.Objective == SizingObjective.ShortestTime;

    /// <summary>The best choice found that meets the wish; null for none.</summary>
    public Trial? Best { get; private set; }

    /// <summary>The next best that was found; null for none.</summary>
    public Trial? Second { get; private set; }

    /// <summary>Least sum of a choice that was left aside because of the time that its flow tells, without its discharge; infinite for none.</summary>
    public double Untimed { get; private set; } = double.PositiveInfinity;

    /// <summary>Whether the work is done.</summary>
    public bool IsSpent => flows.Work >= work;

    /// <summary>How many pieces of work a part of all work has room for.</summary>
    /// <param name="each">Work of one piece.</param>
    /// <param name="part">One over the part.</param>
    public int RoomFor(int each, int part) => work / part / each;

    /// <summary>The flows.</summary>
    public CandidateFlow Flows => flows;

    /// <summary>The times.</summary>
    public WishTimes Times => times;

    /// <summary>What the objective makes of a choice: the lower the better.</summary>
    public double Value(Trial trial) => model.Objective switch
    {
        SizingObjective.BestBalance => trial.Worst,
        SizingObjective.ShortestTime => trial.Times?.Most ?? double.PositiveInfinity,
        _ => trial.Sum,
    };

    /// <summary>A sum over which a choice cannot be better than the best.</summary>
    public double Limit =>
        Best is not { } best ? double.MaxValue : model.Objective == SizingObjective.FewestChanges ? best.Sum - 0.5 : best.Sum - Slack * Math.Max(1e-3, Math.Abs(best.Sum));

    /// <summary>Whether the flow of a choice meets the wish.</summary>
    public bool Meets(Trial trial) =>
        trial.IsSolved
        && !(model.Wish.Deviation is { } deviation && trial.Worst > deviation * (1 + Slack))
        && !(model.Wish.LeastPressure is { } least && trial.LeastPressure < least.Pascals * (1 - Slack));

    /// <summary>Takes a choice.</summary>
    /// <param name="choices">Choice of each group.</param>
    /// <returns>Its flow.</returns>
    public Trial Offer(byte[] choices)
    {
        var trial = flows.Of(choices);
        if (!Meets(trial) || trial == Best || (Second is not null && !needsTime && Compare(trial, Second) >= 0)) return trial;
        if ((needsTime ? Timed(trial) : trial) is { } kept) Keep(kept);
        return trial;
    }

    /// <summary>Leaves a part of the search aside because of the time that its flow tells.</summary>
    /// <param name="sum">Least sum in it.</param>
    public void LeaveUntimed(double sum) => Untimed = Math.Min(Untimed, sum);

    // The choice with its times where they are within the wish; null where they are not, or where it is no use to know.
    Trial? Timed(Trial trial)
    {
        if (timed.TryGetValue(trial, out var known)) return times.IsWithin(known.Times!.Value) ? known : null;
        // A choice that could only be second is not worth a discharge.
        if (model.Objective != SizingObjective.ShortestTime && Best is not null && Compare(trial, Best) >= 0) return null;
        var isSlow = model.Objective == SizingObjective.ShortestTime && times.IsSparing && Best is not null && trial.Flow < NearFlow * Best.Flow;
        if (isSlow || !times.MayBeWithin(new(trial.Flow, trial.Flow)))
        {
            LeaveUntimed(trial.Sum);
            return null;
        }
        known = trial with { Times = times.Of(trial, model.Objective == SizingObjective.ShortestTime && Second is { } second ? second.Times!.Value.Most : double.PositiveInfinity) };
        timed.Add(trial, known);
        return times.IsWithin(known.Times.Value) ? known : null;
    }

    /// <summary>Which of two is better: the objective, then fewer changes, then the smaller deviation, then the earlier choice in the stock's order.</summary>
    public int Compare(Trial one, Trial other)
    {
        var (a, b) = (Value(one), Value(other));
        if (Math.Abs(a - b) > Slack * Math.Max(1e-3, Math.Abs(b))) return a.CompareTo(b);
        if (one.Changes != other.Changes) return one.Changes.CompareTo(other.Changes);
        if (Math.Abs(one.Worst - other.Worst) > Slack) return one.Worst.CompareTo(other.Worst);
        return one.Choices.AsSpan().SequenceCompareTo(other.Choices);
    }

    void Keep(Trial trial)
    {
        if (Best is null || Compare(trial, Best) < 0) (Best, Second) = (trial, Best);
        else if (!trial.Choices.AsSpan().SequenceEqual(Best.Choices) && (Second is null || Compare(trial, Second) < 0)) Second = trial;
    }
}

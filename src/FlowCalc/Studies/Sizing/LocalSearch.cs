namespace FlowCalc.Studies.Sizing;

/// <summary>Improves a choice one group, then two groups at a time, as long as that helps: quick to find something good, and no proof of anything.</summary>
/// <param name="model">The choices.</param>
/// <param name="finds">Where what meets the wish is kept.</param>
/// <param name="ambient">Absolute pressure of the surroundings, Pa.</param>
internal sealed class LocalSearch(SizingModel model, Finds finds, double ambient)
{
    /// <summary>Goes down from a start.</summary>
    /// <param name="start">Choice of each group; not changed.</param>
    /// <param name="pairs">Whether to try two groups at a time as well.</param>
    /// <param name="work">Work after which to end, as the flows count it.</param>
    /// <returns>The best on the way.</returns>
    public Trial Descend(byte[] start, bool pairs, int work)
    {
        var best = finds.Offer(start);
        while (Step(ref best, work) || (pairs && Pair(ref best, work))) { }
        return best;
    }

    // Each group in turn takes its best choice.
    bool Step(ref Trial best, int work)
    {
        var isBetter = false;
        for (var group = 0; group < model.Count.Length; group++)
            isBetter |= Vary(ref best, best.Choices, group, -1, work);
        return isBetter;
    }

    bool Pair(ref Trial best, int work)
    {
        for (var group = 0; group < model.Count.Length; group++)
        {
            var from = best.Choices;
            for (byte choice = 0; choice < model.Count[group]; choice++)
            {
                if (choice == from[group]) continue;
                byte[] changed = [.. from];
                changed[group] = choice;
                for (var other = group + 1; other < model.Count.Length; other++)
                    if (Vary(ref best, changed, other, group, work)) return true;
            }
        }
        return false;
    }

    bool Vary(ref Trial best, byte[] from, int group, int with, int work)
    {
        var isBetter = false;
        for (byte choice = 0; choice < model.Count[group]; choice++)
        {
            if (finds.Flows.Work >= work || finds.IsSpent) return false;
            if (choice == from[group] && with < 0) continue;
            byte[] changed = [.. from];
            changed[group] = choice;
            var trial = finds.Offer(changed);
            if (!IsBetter(trial, best)) continue;
            (best, isBetter) = (trial, true);
        }
        return isBetter;
    }

    bool IsBetter(Trial trial, Trial than)
    {
        var (a, b) = (Off(trial), Off(than));
        if (a != b) return a < b;
        if (a > 0) return trial.Spread < than.Spread;
        return model.Objective == SizingObjective.ShortestTime ? trial.Flow > than.Flow : finds.Compare(trial, than) < 0;
    }

    // How far a choice is from the wish; 0 for one that meets it.
    double Off(Trial trial)
    {
        if (!trial.IsSolved) return double.PositiveInfinity;
        if (finds.Meets(trial) && finds.Times.MayBeWithin(new(trial.Flow, trial.Flow))) return 0;
        var off = model.Wish.Deviation is { } deviation ? Math.Max(0, trial.Worst - deviation) : 0;
        if (model.Wish.LeastPressure is { } least) off += Math.Max(0, (least.Pascals - trial.LeastPressure) / (least.Pascals - ambient));
        if (!double.IsNaN(finds.Times.TimeTimesFlow))
        {
            var time = finds.Times.TimeTimesFlow / trial.Flow;
            if (model.Wish.Latest is { } latest) off += Math.Max(0, time / latest.Seconds - 1);
            if (model.Wish.Earliest is { } earliest) off += Math.Max(0, earliest.Seconds / time - 1);
        }
        return Math.Max(off, double.Epsilon);
    }
}

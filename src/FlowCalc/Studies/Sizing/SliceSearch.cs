namespace FlowCalc.Studies.Sizing;

/// <summary>
/// Goes through the choices that can have a flow within a slice, run by run from the supply outwards. The pressure at each point is kept as a range: a run takes its losses
/// from it, a nozzle narrows it all the way back to the supply. What is left at the end goes to the true solve.
/// </summary>
/// <param name="model">The choices.</param>
/// <param name="table">The same in solve order.</param>
/// <param name="limit">Sum above which a choice is of no interest, asked anew each time.</param>
/// <param name="finds">Takes each choice that is left, and knows when the work is done.</param>
/// <param name="cancellation">Stops the search.</param>
internal sealed class SliceSearch(SizingModel model, ChoiceTable table, Func<double> limit, Finds finds, CancellationToken cancellation)
{
    // Places that take as long to look at as one solve, about.
    const int LooksPerSolve = 32;

    readonly byte[] choices = new byte[model.Count.Length];
    readonly int[] holders = new int[model.Count.Length];
    readonly int[] chosen = new int[table.Network.Count];
    readonly Span[] pressures = new Span[table.Network.Count];
    readonly int[][] pending = Pending(table);
    readonly (double Least, int Choice)[][] orders = [.. table.Choices.Select(own => new (double, int)[own])];
    readonly Stack<(int Node, Span Was)> trail = new();
    FlowSlice slice = null!;
    SubtreeBounds bounds = null!;
    int looks;

    /// <summary>Lowest sum at which anything was left aside in the last slice for being over the limit; infinite for none.</summary>
    public double LeftAside { get; private set; }

    /// <summary>Goes through a slice.</summary>
    /// <param name="within">The slice.</param>
    /// <param name="least">Its bounds.</param>
    /// <returns>False where the work was done before the end.</returns>
    public bool Run(FlowSlice within, SubtreeBounds least)
    {
        (slice, bounds, LeftAside) = (within, least, double.PositiveInfinity);
        Array.Clear(holders);
        trail.Clear();
        pressures[0] = within.Supply;
        return Visit(1, 0);
    }

    bool Visit(int node, double sum)
    {
        if (node == chosen.Length)
        {
            finds.Offer(choices);
            return !finds.IsSpent;
        }
        if (++looks % LooksPerSolve == 0)
        {
            cancellation.ThrowIfCancellationRequested();
            finds.Flows.Work++;
            if (finds.IsSpent) return false;
        }
        var parent = table.Network.Parent[node];
        var (own, group, from) = (table.Choices[node], table.Group[node], pressures[parent]);
        var rest = 0.0;
        foreach (var other in pending[node]) rest += bounds.Start(other, chosen[table.Network.Parent[other]], pressures[table.Network.Parent[other]]);

        var order = orders[node];
        var options = 0;
        for (var choice = 0; choice < own; choice++)
        {
            if (group >= 0 && holders[group] > 0 && choices[group] != choice) continue;
            var least = sum + rest + table.Sum[node][choice] + bounds.End(node, choice, from - slice.Losses[node][chosen[parent] * own + choice]);
            if (IsOver(least)) continue;
            var at = options++;
            for (; at > 0 && order[at - 1].Least > least; at--) order[at] = order[at - 1];
            order[at] = (least, choice);
        }
        for (var at = 0; at < options; at++)
        {
            var choice = order[at].Choice;
            if (IsOver(order[at].Least)) continue;
            chosen[node] = choice;
            Hold(group, choice);
            pressures[node] = from - slice.Losses[node][chosen[parent] * own + choice];
            var goesOn = table.Area[node] is null ? Visit(node + 1, sum + table.Sum[node][choice]) : VisitNozzle(node, sum + table.Sum[node][choice], rest);
            Release(group);
            if (!goesOn) return false;
        }
        return true;
    }

    bool VisitNozzle(int node, double sum, double rest)
    {
        var (group, end) = (table.NozzleGroup[node], pressures[node]);
        for (var choice = 0; choice < table.Area[node].Length; choice++)
        {
            if (group >= 0 && holders[group] > 0 && choices[group] != choice) continue;
            var narrowed = end.And(slice.NozzlePressures[node][choice]);
            var with = sum + table.NozzleSum[node][choice];
            if (narrowed.IsEmpty || IsOver(with + rest)) continue;
            var before = trail.Count;
            Hold(group, choice);
            var goesOn = !Narrow(node, narrowed) || Visit(node + 1, with);
            Release(group);
            while (trail.Count > before)
            {
                var (changed, was) = trail.Pop();
                pressures[changed] = was;
            }
            if (!goesOn) return false;
        }
        return true;
    }

    // From a node back to the supply; false where nothing is left somewhere.
    bool Narrow(int node, Span pressure)
    {
        while (true)
        {
            trail.Push((node, pressures[node]));
            pressures[node] = pressure;
            if (pressure.IsEmpty) return false;
            if (node == 0) return true;
            var parent = table.Network.Parent[node];
            pressure = pressures[parent].And(pressure + slice.Losses[node][chosen[parent] * table.Choices[node] + chosen[node]]);
            node = parent;
            if (pressure == pressures[node]) return true;
        }
    }

    bool IsOver(double least)
    {
        if (!(least > limit())) return false;
        LeftAside = Math.Min(LeftAside, least);
        return true;
    }

    void Hold(int group, int choice)
    {
        if (group < 0) return;
        choices[group] = (byte)choice;
        holders[group]++;
    }

    void Release(int group)
    {
        if (group >= 0) holders[group]--;
    }

    // The runs whose start is reached when a node's turn comes, and whose own turn comes later.
    static int[][] Pending(ChoiceTable table)
    {
        var parent = table.Network.Parent;
        var pending = new int[parent.Length][];
        for (var node = 0; node < parent.Length; node++)
        {
            var at = node;
            pending[node] = [.. Enumerable.Range(node + 1, parent.Length - node - 1).Where(other => parent[other] < at)];
        }
        return pending;
    }
}

namespace FlowCalc.Studies.Sizing;

/// <summary>Tries every choice there is, where the work is enough for that: the proof where no bounds on the flow are known, as of an agent that expands.</summary>
/// <param name="model">The choices.</param>
/// <param name="finds">Where what meets the wish is kept.</param>
/// <param name="work">Work after which to end.</param>
internal sealed class EveryChoice(SizingModel model, Finds finds, int work)
{
    /// <summary>Searches.</summary>
    /// <returns>What no choice that meets the wish is below in the objective's measure, and whether all were tried.</returns>
    public (double Bound, bool IsProven) Run()
    {
        if (finds.Flows.Work + model.Choices * finds.Flows.WorkOfOne > work) return (0, false);
        var choices = new byte[model.Count.Length];
        while (true)
        {
            finds.Offer(choices);
            if (finds.IsSpent) return (0, false);
            var group = 0;
            while (group < choices.Length && ++choices[group] == model.Count[group]) choices[group++] = 0;
            if (group == choices.Length) return (finds.Best is { } best ? finds.Value(best) : double.PositiveInfinity, true);
        }
    }
}

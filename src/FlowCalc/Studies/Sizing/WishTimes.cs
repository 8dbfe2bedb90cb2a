using FlowCalc.Agents;
using FlowCalc.Discharge;
using FlowCalc.Layouts;

namespace FlowCalc.Studies.Sizing;

/// <summary>Follows the discharge of a choice in every case, what was the slowest case first: where that is too slow already, the others need not be followed.</summary>
/// <param name="model">The choices.</param>
/// <param name="flows">Keeps the work.</param>
/// <param name="scheduler">Where cases run beside the caller's thread.</param>
/// <param name="cancellation">Stops a discharge.</param>
internal sealed class WishTimes(SizingModel model, CandidateFlow flows, TaskScheduler scheduler, CancellationToken cancellation)
{
    // What a case takes in solves of a liquid's steady flow, about.
    const int WorkOfLiquid = 400, WorkOfExpanding = 10_000;

    const double Slack = 1e-9;

    /// <summary>How far the time told from the flow may be out before a discharge is followed after all.</summary>
    public const double Trust = 1.25;

    // Most choices of which every discharge is followed, whatever their flow tells.
    const double FewChoices = 300;

    readonly CaseList? list = model.Layout.Supply is BottleSupply ? CaseList.Of(model.Layout) : null;
    int slowest;

    /// <summary>Whether discharges are left aside of which the flow tells enough.</summary>
    public bool IsSparing { get; } = model.Choices > FewChoices;

    /// <summary>Discharges followed, each in one case or in all.</summary>
    public int Discharges { get; private set; }

    /// <summary>Longest time of the first discharge times its first flow, kg, about the same for all lines on one bottle; NaN before there is one.</summary>
    public double TimeTimesFlow { get; private set; } = double.NaN;

    /// <summary>The times of a choice in every case.</summary>
    /// <param name="trial">The choice.</param>
    public (double Least, double Most) Of(Trial trial)
    {
        Discharges++;
        var times = All(model.Apply(trial.Choices));
        var range = (Least: times.Min(), Most: times.Max());
        slowest = times.IndexOf(range.Most);
        if (double.IsNaN(TimeTimesFlow) && double.IsFinite(range.Most)) TimeTimesFlow = range.Most * trial.Flow;
        return range;
    }

    /// <summary>The times of a choice, or those of what was the slowest case so far where they are longer than is of use.</summary>
    /// <param name="trial">The choice.</param>
    /// <param name="longest">Longest time that is of use, s.</param>
    public (double Least, double Most) Of(Trial trial, double longest)
    {
        var count = list!.Temperatures.Length * list.Attitudes.Length;
        if (count == 1) return Of(trial);
        var layout = model.Apply(trial.Choices);
        var (temperature, attitude) = (list.Temperatures[slowest / list.Attitudes.Length], list.Attitudes[slowest % list.Attitudes.Length]);
        var time = All(layout with { Cases = new([UnitsNet.Temperature.FromKelvins(temperature)], [attitude]) })[0];
        if (time <= longest && !(model.Wish.Latest is { } latest && time > latest.Seconds * (1 + Slack))) return Of(trial);
        Discharges++;
        return (time, time);
    }

    /// <summary>Whether times are within the wish.</summary>
    public bool IsWithin((double Least, double Most) times) =>
        times.Most < double.PositiveInfinity
        && !(model.Wish.Earliest is { } earliest && times.Least < earliest.Seconds * (1 - Slack))
        && !(model.Wish.Latest is { } latest && times.Most > latest.Seconds * (1 + Slack));

    /// <summary>Whether a flow may lead to a time within the wish, as far as the first discharge tells.</summary>
    /// <param name="flow">Range of the first flow, kg/s.</param>
    public bool MayBeWithin(Span flow) =>
        !IsSparing || double.IsNaN(TimeTimesFlow)
        || (!(model.Wish.Earliest is { } earliest && flow.Low > 0 && TimeTimesFlow / flow.Low * Trust < earliest.Seconds)
            && !(model.Wish.Latest is { } latest && TimeTimesFlow / flow.High / Trust > latest.Seconds));

    List<double> All(Layout layout)
    {
        var result = LayoutDischarge.Solve(layout, scheduler, cancellation);
        flows.Work += result.Cases.Length * (layout.Agent is LiquidAgent ? WorkOfLiquid : WorkOfExpanding);
        return [.. result.Cases.Select(Time)];
    }

    double Time(DischargeCase one) =>
        one.Failure is not null ? double.PositiveInfinity : (HasRequirement ? one.RequiredTime : one.Time95)?.Seconds ?? double.PositiveInfinity;

    bool HasRequirement => ApplicationRequirement.For(model.Layout) is not null;
}

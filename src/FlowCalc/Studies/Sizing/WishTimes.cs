using System.Collections.Immutable;
using FlowCalc.Agents;
using FlowCalc.Discharge;
using FlowCalc.Layouts;

namespace FlowCalc.Studies.Sizing;

/// <summary>Follows the discharge of a choice in every case, the first case first: where that is out of the wished time already, the others need not be followed.</summary>
/// <param name="model">The choices.</param>
/// <param name="flows">Keeps the work.</param>
/// <param name="scheduler">Where cases run beside the caller's thread.</param>
/// <param name="cancellation">Stops a discharge.</param>
internal sealed class WishTimes(SizingModel model, CandidateFlow flows, TaskScheduler scheduler, CancellationToken cancellation)
{
    // What a case takes in solves of a liquid's steady flow, about.
    const int WorkOfLiquid = 150, WorkOfExpanding = 10_000;

    /// <summary>How far the time told from the flow may be out before a discharge is followed after all.</summary>
    public const double Trust = 1.25;

    readonly CaseList? list = model.Layout.Supply is BottleSupply ? CaseList.Of(model.Layout) : null;

    /// <summary>Discharges followed.</summary>
    public int Discharges { get; private set; }

    /// <summary>Time of the first discharge times its first flow, kg, about the same for all lines on one bottle; NaN before there is one.</summary>
    public double TimeTimesFlow { get; private set; } = double.NaN;

    /// <summary>The times of a choice.</summary>
    /// <param name="trial">The choice.</param>
    /// <param name="isWhole">Whether every case is wanted whatever the first says.</param>
    public (double Least, double Most) Of(Trial trial, bool isWhole)
    {
        Discharges++;
        var layout = model.Apply(trial.Choices);
        var first = Range(layout with { Cases = new([UnitsNet.Temperature.FromKelvins(list!.Temperatures[0])], [list.Attitudes[0]]) }, 1);
        if (double.IsNaN(TimeTimesFlow) && double.IsFinite(first.Most)) TimeTimesFlow = first.Most * trial.Flow;
        var count = list.Temperatures.Length * list.Attitudes.Length;
        return count == 1 || (!isWhole && !IsWithin(first)) ? first : Range(layout, count);
    }

    /// <summary>Whether times are within the wish.</summary>
    public bool IsWithin((double Least, double Most) times) =>
        times.Most < double.PositiveInfinity
        && !(model.Wish.Earliest is { } earliest && times.Least < earliest.Seconds * (1 - 1e-9))
        && !(model.Wish.Latest is { } latest && times.Most > latest.Seconds * (1 + 1e-9));

    /// <summary>Whether a flow may lead to a time within the wish, as far as the first discharge tells.</summary>
    /// <param name="flow">Range of the first flow, kg/s.</param>
    public bool MayBeWithin(Span flow) =>
        double.IsNaN(TimeTimesFlow)
        || (!(model.Wish.Earliest is { } earliest && flow.Low > 0 && TimeTimesFlow / flow.Low * Trust < earliest.Seconds)
            && !(model.Wish.Latest is { } latest && TimeTimesFlow / flow.High / Trust > latest.Seconds));

    (double Least, double Most) Range(Layout layout, int cases)
    {
        flows.Work += cases * (layout.Agent is LiquidAgent ? WorkOfLiquid : WorkOfExpanding);
        var result = LayoutDischarge.Solve(layout, scheduler, cancellation);
        return (Each(result.Cases).Min(), Each(result.Cases).Max());
    }

    IEnumerable<double> Each(ImmutableArray<DischargeCase> cases) => cases.Select(Time);

    double Time(DischargeCase one) =>
        one.Failure is not null ? double.PositiveInfinity : (HasRequirement ? one.RequiredTime : one.Time95)?.Seconds ?? double.PositiveInfinity;

    bool HasRequirement => (model.Layout.Requirement ?? ApplicationRequirement.Of(model.Layout.Application, model.Layout.Agent)) is not null;
}

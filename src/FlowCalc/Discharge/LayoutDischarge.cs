using System.Collections.Immutable;
using System.Runtime.InteropServices;
using FlowCalc.Bottles;
using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>The discharge of a layout whose supply is a bottle, from the opening valve to the empty bottle.</summary>
public static class LayoutDischarge
{
    /// <summary>Part of the contents whose time is always told.</summary>
    public const double UsualPart = 0.95;

    /// <summary>Follows every case.</summary>
    /// <param name="layout">A checked layout.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>One entry a case; a case that has no discharge says why and does not keep the others from theirs.</returns>
    /// <exception cref="ArgumentException">The layout's supply is not a bottle.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static DischargeResult Solve(Layout layout, CancellationToken cancellationToken = default) => Solve(layout, TaskScheduler.Default, cancellationToken);

    /// <summary>Follows every case, side by side as far as a scheduler has places.</summary>
    /// <param name="layout">A checked layout.</param>
    /// <param name="scheduler">Where cases run beside the caller's thread.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>As without a scheduler.</returns>
    /// <exception cref="ArgumentException">The layout's supply is not a bottle.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static DischargeResult Solve(Layout layout, TaskScheduler scheduler, CancellationToken cancellationToken) => Solve(layout, DischargeDepth.Whole, scheduler, cancellationToken);

    /// <summary>Follows every case to a depth.</summary>
    /// <param name="layout">A checked layout.</param>
    /// <param name="depth">How far.</param>
    /// <param name="scheduler">Where cases run beside the caller's thread.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>One entry a case.</returns>
    /// <exception cref="ArgumentException">The layout's supply is not a bottle.</exception>
    internal static DischargeResult Solve(Layout layout, DischargeDepth depth, TaskScheduler scheduler, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(scheduler);
        var set = DischargeSet.Of(layout, depth, cancellationToken);
        var cases = new DischargeCase[set.Count];
        // Cases know nothing of each other.
        Parallel.For(0, cases.Length, new ParallelOptions { TaskScheduler = scheduler, CancellationToken = cancellationToken }, at => cases[at] = set.Answer(at));
        return set.Result(ImmutableCollectionsMarshal.AsImmutableArray(cases));
    }

    /// <summary>How many cases a layout has.</summary>
    /// <param name="layout">A checked layout whose supply is a bottle.</param>
    internal static int CasesOf(Layout layout)
    {
        var list = CaseList.Of(layout);
        return list.Temperatures.Length * list.Attitudes.Length;
    }

    /// <summary>Follows one case.</summary>
    /// <param name="layout">A checked layout.</param>
    /// <param name="at">Index of the case.</param>
    /// <param name="depth">How far.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>A result of that case alone.</returns>
    /// <exception cref="ArgumentException">The layout's supply is not a bottle.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    internal static DischargeResult SolveOne(Layout layout, int at, DischargeDepth depth, CancellationToken cancellationToken)
    {
        var set = DischargeSet.Of(layout, depth, cancellationToken);
        return set.Result([set.Answer(at)]);
    }

    /// <summary>Follows some cases for their numbers alone: without band, curves, time scales and assumptions; see <see cref="DischargeDepth.Bare"/>.</summary>
    /// <param name="layout">A checked layout whose supply is a bottle.</param>
    /// <param name="cases">The cases.</param>
    /// <param name="warmer">How much warmer than its case each is followed, K.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    internal static DischargeResult SolveBare(Layout layout, ImmutableArray<(double Temperature, Attitude Attitude)> cases, double warmer, CancellationToken cancellationToken)
    {
        var bottle = ((BottleSupply)layout.Supply).Bottle;
        var requirement = ApplicationRequirement.For(layout);
        var answer = DischargeSet.Answering(layout, bottle, requirement, DischargeDepth.Bare, cancellationToken);
        var answers = new DischargeCase[cases.Length];
        for (var at = 0; at < answers.Length; at++)
            answers[at] = answer(Temperature.FromKelvins(cases[at].Temperature + warmer), cases[at].Attitude, BottlePlace.Of(bottle, cases[at].Attitude.Gravity));
        return new(ImmutableCollectionsMarshal.AsImmutableArray(answers), requirement, layout.Requirement is not null, []);
    }
}

using CsCheck;
using FlowCalc.Losses;

namespace FlowCalc.Tests.Properties.Losses;

public class TeeLawTests
{
    private static readonly Gen<double> Share = Gen.Double[0, 1];

    private static readonly Gen<TeeBody> Body = Gen.OneOf(Gen.Const(TeeBody.Smooth), Gen.Const(TeeBody.Threaded));

    private static readonly Gen<TeeLeg> Leg = Gen.OneOf(
        Body.Select(RunFedTeeShape.Run),
        Gen.Select(Gen.Double[0.3, 1.5], Gen.Double[0, 1.2], Body).Select(RunFedTeeShape.Branch),
        Gen.Select(Gen.Double[0.3, 1.5], Body).Select(BullheadTee.Outlet));

    [Fact]
    public void Tee_never_gains_energy() =>
        Gen.Select(Share, Gen.Double[0.4, 1], Gen.Double[0, 1.2], Body).Sample((share, boreRatio, edge, body) =>
            (1 - share) * RunFedTee.Run(share, body) + share * RunFedTee.Branch(share, boreRatio, edge, body) >= 0, iter: 20_000);

    [Fact]
    public void Wide_branch_never_gains_energy() =>
        Gen.Select(Share, Gen.Double[1, 3], Body).Sample((share, boreRatio, body) =>
            (1 - share) * RunFedTee.Run(share, body) + share * RunFedTee.Branch(share, boreRatio, 0, body) >= 0, iter: 5_000);

    [Fact]
    public void Energy_lost_in_a_smooth_tee_is_least_with_a_dead_branch() =>
        Assert.Equal(0.030, Enumerable.Range(0, 1001).Min(i => (1 - i / 1000.0) * RunFedTee.Run(i / 1000.0, TeeBody.Smooth) + i / 1000.0 * RunFedTee.Branch(i / 1000.0, 1, 0, TeeBody.Smooth)), tolerance: 1e-12);

    [Fact]
    public void Leg_is_the_coefficient_on_the_inlets_head() =>
        Gen.Select(Leg, Share, Gen.Double[1e-3, 10]).Sample((leg, share, inlet) =>
        {
            var own = share * inlet;
            var expected = leg.Coefficient(own / inlet).Coefficient * inlet * inlet;
            return Math.Abs(leg.Loss(own, inlet).Loss - expected) <= 1e-14 * inlet * inlet * (1 + Math.Abs(leg.Own));
        }, iter: 5_000);

    [Fact]
    public void Partial_derivatives_of_a_leg_are_those_of_differences() =>
        Gen.Select(Leg, Gen.Double[0.01, 0.99], Gen.Double[1e-3, 10]).Sample((leg, share, inlet) =>
        {
            var own = share * inlet;
            var step = 1e-3 * own;
            var (_, byOwn, byInlet) = leg.Loss(own, inlet);
            var scale = 1e-9 * inlet * (1 + Math.Abs(leg.Own));
            return Math.Abs(byOwn - Slope.Of(m => leg.Loss(m, inlet).Loss, own, step)) < scale
                && Math.Abs(byInlet - Slope.Of(m => leg.Loss(own, m).Loss, inlet, step)) < scale;
        }, iter: 5_000);

    [Fact]
    public void Partial_derivatives_add_up_to_twice_the_loss_as_of_any_square_law() =>
        Gen.Select(Leg, Gen.Double[-2, 2], Gen.Double[-2, 2]).Sample((leg, own, inlet) =>
        {
            var (loss, byOwn, byInlet) = leg.Loss(own, inlet);
            return Math.Abs(own * byOwn + inlet * byInlet - 2 * loss) < 1e-12 * (1 + Math.Abs(leg.Own));
        }, iter: 5_000);

    [Fact]
    public void Leg_stays_finite_and_continuous_for_any_trial_flow_of_a_solver() =>
        Gen.Select(Leg, Gen.Double[-2, 2], Gen.OneOf(Gen.Const(0.0), Gen.Double[-2, 2])).Sample((leg, own, inlet) =>
        {
            var here = leg.Loss(own, inlet);
            var beside = leg.Loss(Math.BitIncrement(own), Math.BitIncrement(inlet));
            return double.IsFinite(here.Loss) && double.IsFinite(here.ByOwn) && double.IsFinite(here.ByInlet)
                && Math.Abs(here.Loss - beside.Loss) < 1e-12 * (1 + Math.Abs(leg.Own));
        }, iter: 5_000);

    [Fact]
    public void Slopes_of_the_coefficients_are_those_of_differences() =>
        Gen.Select(Gen.Double[0.01, 0.99], Gen.Double[0.3, 1.5], Gen.Double[0, 1], Body).Sample((share, boreRatio, edge, body) =>
        {
            const double step = 1e-3;
            var scale = 1e-9 * (1 + 1 / Math.Pow(boreRatio, 4));
            return Math.Abs(RunFedTee.RunWithSlope(share, body).Slope - Slope.Of(q => RunFedTee.Run(q, body), share, step)) < scale
                && Math.Abs(RunFedTee.BranchWithSlope(share, boreRatio, edge, body).Slope - Slope.Of(q => RunFedTee.Branch(q, boreRatio, edge, body), share, step)) < scale
                && Math.Abs(BullheadTee.CoefficientWithSlope(share, boreRatio, body).Slope - Slope.Of(q => BullheadTee.Coefficient(q, boreRatio, body), share, step)) < scale;
        }, iter: 5_000);

    [Fact]
    public void Threaded_body_never_loses_less_than_a_smooth_one() =>
        Gen.Select(Share, Gen.Double[0.3, 1.5]).Sample((share, boreRatio) =>
            RunFedTee.Run(share, TeeBody.Threaded) >= RunFedTee.Run(share, TeeBody.Smooth)
            && RunFedTee.Branch(share, boreRatio, 0, TeeBody.Threaded) >= RunFedTee.Branch(share, boreRatio, 0, TeeBody.Smooth)
            && BullheadTee.Coefficient(share, boreRatio, TeeBody.Threaded) >= BullheadTee.Coefficient(share, boreRatio, TeeBody.Smooth), iter: 1_000);

    [Fact]
    public void Bullhead_loss_rises_with_either_flow() =>
        Gen.Select(Gen.Double[0.3, 1.5], Body, Gen.Double[1e-6, 2], Gen.Double[1e-6, 2]).Sample((boreRatio, body, own, inlet) =>
            BullheadTee.Outlet(boreRatio, body).Loss(own, inlet) is { ByOwn: > 0, ByInlet: > 0 }, iter: 1_000);
}

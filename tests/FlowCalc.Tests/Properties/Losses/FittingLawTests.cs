using CsCheck;
using FlowCalc.Losses;

namespace FlowCalc.Tests.Properties.Losses;

public class FittingLawTests
{
    private static readonly Gen<double> Flow = Gen.Double[-7, -2].Select(decade => Math.Pow(10, decade));

    private static readonly Gen<double> Density = Gen.Double[500, 2000];

    private static readonly Gen<double> Coefficient = Gen.Double[-8, -4].Select(decade => Math.Pow(10, decade));

    [Fact]
    public void Orifice_gives_the_flow_back_that_its_pressure_was_found_for() =>
        Gen.Select(Flow, Density, Coefficient).Sample((flow, density, area) =>
        {
            var drop = Orifice.PressureDrop(flow, density, area).PressureDrop;
            return Math.Abs(Orifice.VolumeFlow(drop, density, area).VolumeFlow - flow) < 1e-13 * flow;
        }, iter: 2_000);

    [Fact]
    public void Slopes_of_flow_and_pressure_are_each_others_reciprocal() =>
        Gen.Select(Flow, Density, Coefficient).Sample((flow, density, area) =>
        {
            var (drop, slope) = Orifice.PressureDrop(flow, density, area);
            return Math.Abs(Orifice.VolumeFlow(drop, density, area).Slope * slope - 1) < 1e-13;
        }, iter: 2_000);

    [Fact]
    public void Slopes_of_orifice_and_valve_are_those_of_differences() =>
        Gen.Select(Flow, Density, Coefficient).Sample((flow, density, coefficient) =>
        {
            var orifice = Slope.Of(q => Orifice.PressureDrop(q, density, coefficient).PressureDrop, flow, 1e-3 * flow);
            var valve = Slope.Of(q => FlowCoefficientLoss.PressureDrop(q, density, coefficient).PressureDrop, flow, 1e-3 * flow);
            return Math.Abs(Orifice.PressureDrop(flow, density, coefficient).Slope - orifice) < 1e-10 * orifice
                && Math.Abs(FlowCoefficientLoss.PressureDrop(flow, density, coefficient).Slope - valve) < 1e-10 * valve;
        }, iter: 2_000);

    [Fact]
    public void Reverse_flow_turns_the_sign_of_the_loss_and_keeps_its_slope() =>
        Gen.Select(Flow, Density, Coefficient).Sample((flow, density, coefficient) =>
        {
            var (orifice, orificeSlope) = Orifice.PressureDrop(flow, density, coefficient);
            var (valve, valveSlope) = FlowCoefficientLoss.PressureDrop(flow, density, coefficient);
            return Orifice.PressureDrop(-flow, density, coefficient) == (-orifice, orificeSlope)
                && FlowCoefficientLoss.PressureDrop(-flow, density, coefficient) == (-valve, valveSlope)
                && Orifice.VolumeFlow(-orifice, density, coefficient).VolumeFlow == -Orifice.VolumeFlow(orifice, density, coefficient).VolumeFlow
                && LossCoefficient.PressureDrop(2, density, -flow) == -LossCoefficient.PressureDrop(2, density, flow);
        }, iter: 1_000);

    [Fact]
    public void Conversions_of_flow_coefficients_return() =>
        Coefficient.Sample(coefficient =>
            Math.Abs(KFactor.FromEffectiveArea(KFactor.ToEffectiveArea(coefficient)) - coefficient) < 1e-14 * coefficient
            && Math.Abs(KFactor.FromLitresPerMinute(KFactor.ToLitresPerMinute(coefficient)) - coefficient) < 1e-14 * coefficient
            && Math.Abs(FlowCoefficientLoss.FromCubicMetresPerHour(FlowCoefficientLoss.ToCubicMetresPerHour(coefficient)) - coefficient) < 1e-14 * coefficient, iter: 1_000);

    [Fact]
    public void Coefficient_of_a_valve_gives_the_valves_pressure_loss_on_any_bore() =>
        Gen.Select(Flow, Density, Coefficient, Gen.Double[0.003, 0.025]).Sample((flow, density, kv, bore) =>
        {
            var velocity = flow / (Math.PI / 4 * bore * bore);
            var byHead = LossCoefficient.PressureDrop(FlowCoefficientLoss.EquivalentCoefficient(kv, bore), density, velocity);
            var direct = FlowCoefficientLoss.PressureDrop(flow, density, kv).PressureDrop;
            return Math.Abs(byHead - direct) < 1e-13 * direct;
        }, iter: 1_000);

    [Fact]
    public void Tighter_bore_never_loses_less() =>
        Gen.Select(Gen.Double[0.2, 1], Gen.Double[0.2, 1], Gen.Double[0, 8]).Sample((one, other, length) =>
        {
            var tight = ReducedBore.Loss(Math.Min(one, other), length);
            var wide = ReducedBore.Loss(Math.Max(one, other), length);
            return tight.Constant >= wide.Constant && tight.PerFriction >= wide.PerFriction
                && BoreChange.SharpContraction(Math.Min(one, other)) >= BoreChange.SharpContraction(Math.Max(one, other)) - 1e-15
                && BoreChange.Expansion(Math.Min(one, other)) >= BoreChange.Expansion(Math.Max(one, other));
        }, iter: 2_000);

    [Fact]
    public void Thick_orifice_loses_less_the_longer_it_is() =>
        Gen.Select(Gen.Double[0.2, 0.95], Gen.Double[0, 1.999], Gen.Double[0, 1.999]).Sample((boreRatio, one, other) =>
            ReducedBore.Loss(boreRatio, Math.Max(one, other)).Constant <= ReducedBore.Loss(boreRatio, Math.Min(one, other)).Constant, iter: 2_000);

    // The projecting inlet's cubic turns up again by less than 0.0002 just before it ends.
    [Fact]
    public void Inlet_losses_fall_with_the_wall_and_rise_with_the_slant() =>
        Gen.Select(Gen.Double[0, 0.1], Gen.Double[0, 0.1], Gen.Double[0.05, 1.57], Gen.Double[0.05, 1.57]).Sample((thin, thick, one, other) =>
            TubeInlet.Projecting(Math.Min(thin, thick)) >= TubeInlet.Projecting(Math.Max(thin, thick)) - 2e-4
            && TubeInlet.Slanted(Math.Min(one, other)) >= TubeInlet.Slanted(Math.Max(one, other)), iter: 1_000);

    [Fact]
    public void Discharge_coefficient_of_a_short_tube_lies_below_its_ultimate_value_by_less_the_faster_it_flows() =>
        Gen.Select(Gen.Double[1, 3.5], Gen.Double[2, 10]).Sample((decade, length) =>
        {
            var reynolds = Math.Pow(10, decade);
            var slow = Lichtarowicz.DischargeCoefficient(reynolds, length);
            return slow < Lichtarowicz.DischargeCoefficient(1.5 * reynolds, length) && slow < Lichtarowicz.UltimateDischargeCoefficient(length);
        }, iter: 1_000);
}

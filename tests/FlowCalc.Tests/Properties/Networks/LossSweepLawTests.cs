using FlowCalc.Losses;
using FlowCalc.Networks;

namespace FlowCalc.Tests.Properties.Networks;

/// <summary>The sweep in hardware vectors loses what the scalar laws say of the same geometry, and its slopes are theirs: a wrong slope still ends at the answer, only later or not at all.</summary>
public sealed class LossSweepLawTests
{
    const double Density = 998.2, Viscosity = 1.0016e-3, Bore = 0.006, ThroatBore = 0.0035, InletBore = 0.008;

    // Colebrook's 1/√f takes a step a sweep from its start; ten are far more than it needs.
    const int Sweeps = 10;

    // Exponentials and logarithms of vectors are a few units in the last place off, and the eighth root of a bend divides that by 8.
    const double Rounding = 1e-11;

    // Flow through a bore of 6 mm of water: Re from creeping over laminar, the blend and both of its ends to fully turbulent.
    static readonly double[] Reynolds = [1e-3, 3, 90, 700, 1_999, 2_001, 2_500, 3_100, 3_999, 4_001, 9_000, 60_000, 1e6];

    public static TheoryData<double, double> Flows()
    {
        var data = new TheoryData<double, double>();
        foreach (var reynolds in Reynolds)
            foreach (var sign in new[] { 1.0, -1.0 })
                data.Add(sign * reynolds, 0.01);
        foreach (var roughness in new[] { 0.0, 1e-4, 0.04 }) data.Add(50_000, roughness);
        return data;
    }

    [Theory]
    [MemberData(nameof(Flows))]
    public void A_tube_loses_by_the_law_of_friction(double reynolds, double roughness)
    {
        var builder = new NetworkBuilder(2);
        builder.AddRun(-1, new(Bore, 0.7, roughness, 0, 0));

        var (group, slope) = DarcyFriction.PressureGroup(reynolds, roughness);

        // Δp = L/D · f · ρv²/2 with v = Re·μ/(ρD).
        Holds(builder, reynolds, Bore, 0.7 / Bore / (2 * Bore * Bore) * group, 0.7 / Bore / (2 * Bore * Bore) * slope);
    }

    [Theory]
    [MemberData(nameof(Flows))]
    public void A_throat_loses_by_the_law_of_friction_in_its_own_bore(double reynolds, double roughness)
    {
        var builder = new NetworkBuilder(2);
        builder.AddRun(-1, new(Bore, 0, 0.02, 0, 0));
        builder.AddThroat(0, ThroatBore, 12, roughness);

        var (group, slope) = DarcyFriction.PressureGroup(reynolds, roughness);

        Holds(builder, reynolds, ThroatBore, 12 / (2 * ThroatBore * ThroatBore) * group, 12 / (2 * ThroatBore * ThroatBore) * slope);
    }

    [Theory]
    [MemberData(nameof(Flows))]
    public void Bends_lose_by_the_law_of_bends(double reynolds, double roughness)
    {
        var shape = SmoothBend.Shape(1.1, 2.5);
        var builder = new NetworkBuilder(2);
        builder.AddRun(-1, new(Bore, 0, roughness, 0, 0));
        builder.AddBend(0, shape, 3);

        var (group, slope) = SmoothBend.LossGroup(reynolds, roughness, shape);

        Holds(builder, reynolds, Bore, 3 / (2 * Bore * Bore) * group, 3 / (2 * Bore * Bore) * slope);
    }

    [Theory]
    [InlineData(0.02, 0.05)]
    [InlineData(0.0499, 0.05)]
    [InlineData(0.06, 0.05)]
    [InlineData(0.0, 0.05)]
    [InlineData(0.03, 0.0)]
    public void A_tee_leg_loses_by_its_law_and_its_slopes_are_those_by_own_and_inlet_flow(double own, double inlet)
    {
        var leg = new TeeLeg(1.4, -0.9, 0.7, 0.05);
        var builder = new NetworkBuilder(2);
        builder.AddRun(-1, new(InletBore, 0, 0, 0, 0));
        builder.AddRun(0, new(Bore, 0, 0, 0, 0));
        builder.AddTeeLeg(1, leg, InletBore);
        var state = new SteadyState(builder.Build());
        (state.Flow[0], state.Flow[1]) = (inlet, own);

        LossSweep.Fill(state, Viscosity, Density);

        // K on the velocity head of the inlet: the leg's form with flows in the place of velocities, times 1 / (2 ρ A²).
        var perSquare = 1 / (2 * Density * Math.Pow(Math.PI / 4 * InletBore * InletBore, 2));
        var (loss, byOwn, byInlet) = leg.Loss(own, inlet);
        Near(perSquare * loss, state.Loss[1]);
        Near(perSquare * byOwn, state.Slope[1]);
        Near(perSquare * byInlet, state.Cross[1]);
    }

    [Fact]
    public void A_leg_that_flows_back_takes_the_squares_of_both_flows_with_their_signs()
    {
        var leg = new TeeLeg(1.4, -0.9, 0.7, 0);
        var builder = new NetworkBuilder(2);
        builder.AddRun(-1, new(InletBore, 0, 0, 0, 0));
        builder.AddRun(0, new(Bore, 0, 0, 0, 0));
        builder.AddTeeLeg(1, leg, InletBore);
        var state = new SteadyState(builder.Build());
        (state.Flow[0], state.Flow[1]) = (0.04, -0.01);

        LossSweep.Fill(state, Viscosity, Density);

        var perSquare = 1 / (2 * Density * Math.Pow(Math.PI / 4 * InletBore * InletBore, 2));
        var (loss, byOwn, byInlet) = leg.Loss(-0.01, 0.04);
        Near(perSquare * loss, state.Loss[1]);
        Near(perSquare * byOwn, state.Slope[1]);
        Near(perSquare * byInlet, state.Cross[1]);
    }

    [Fact]
    public void A_constant_resistance_loses_the_square_with_its_sign()
    {
        var builder = new NetworkBuilder(2);
        builder.AddRun(-1, new(Bore, 0, 0, 0, 3e8));
        builder.AddRun(0, new(Bore, 0, 0, 0, 3e8, Parallel: 2));
        var state = new SteadyState(builder.Build());
        (state.Flow[0], state.Flow[1]) = (0.02, -0.02);

        LossSweep.Fill(state, Viscosity, Density);

        Near(3e8 * 0.02 * 0.02 / Density, state.Loss[0]);
        Near(2 * 3e8 * 0.02 / Density, state.Slope[0]);
        Near(-3e8 * 0.01 * 0.01 / Density, state.Loss[1]);
        Near(2 * 3e8 * 0.01 / 2 / Density, state.Slope[1]);
    }

    [Fact]
    public void What_stands_still_loses_nothing_and_resists_as_a_creeping_flow_does()
    {
        const double length = 0.7;
        var shape = SmoothBend.Shape(1.1, 2.5);
        var builder = new NetworkBuilder(1);
        builder.AddRun(-1, new(Bore, length, 0.01, 0, 0));
        builder.AddBend(0, shape, 2);
        builder.AddThroat(0, ThroatBore, 12, 0.01);
        var state = new SteadyState(builder.Build());

        Settle(state);

        // Hagen and Poiseuille: 128 μ L / (π ρ d⁴) in tube, throat and, by their arcs, bends.
        double Laminar(double span, double bore) => 128 * Viscosity * span / (Math.PI * Density * Math.Pow(bore, 4));
        Assert.Equal(0, state.Loss[0]);
        var bends = SmoothBend.LossGroup(0, 0.01, shape).Slope / 64 * Bore;
        Assert.Equal(Laminar(length, Bore) + Laminar(12 * ThroatBore, ThroatBore) + 2 * Laminar(bends, Bore), state.Slope[0], 1e-6 * state.Slope[0]);
    }

    [Fact]
    public void Each_run_takes_the_viscosity_that_is_its_own()
    {
        const int runs = 7;
        var builder = new NetworkBuilder(runs);
        for (var j = 0; j < runs; j++)
        {
            builder.AddRun(j - 1, new(Bore, 0.2 + 0.1 * j, 0.01, 0, 1e7));
            builder.AddBend(j, SmoothBend.Shape(0.4 + 0.1 * j, 2), 1);
            builder.AddThroat(j, ThroatBore, 3 + j, 0.01);
        }
        var mixed = new SteadyState(builder.Build());
        var viscosities = new double[NetworkBuilder.Padded(runs)];
        for (var j = 0; j < viscosities.Length; j++) viscosities[j] = 1e-4 * (1 + j);
        for (var j = 0; j < runs; j++) mixed.Flow[j] = 0.01 + 0.002 * j;

        for (var sweep = 0; sweep < Sweeps; sweep++) LossSweep.Fill(mixed, new ViscosityByRun(viscosities), Density);

        for (var j = 0; j < runs; j++)
        {
            var one = new SteadyState(mixed.Network);
            mixed.Flow.CopyTo(one.Flow, 0);
            for (var sweep = 0; sweep < Sweeps; sweep++) LossSweep.Fill(one, viscosities[j], Density);
            Near(one.Loss[j], mixed.Loss[j]);
            Near(one.Slope[j], mixed.Slope[j]);
        }
    }

    // The groups are pressure drop times ρ/μ² by Re; the slope by mass flow follows through Re = 4·m / (π·d·μ).
    static void Holds(NetworkBuilder builder, double reynolds, double bore, double group, double groupSlope)
    {
        var state = new SteadyState(builder.Build());
        var reynoldsPerFlow = 4 / (Math.PI * bore * Viscosity);
        state.Flow[0] = reynolds / reynoldsPerFlow;

        Settle(state);

        var unit = Viscosity * Viscosity / Density;
        Near(unit * group, state.Loss[0]);
        Near(unit * reynoldsPerFlow * groupSlope, state.Slope[0]);
    }

    static void Settle(SteadyState state)
    {
        for (var sweep = 0; sweep < Sweeps; sweep++) LossSweep.Fill(state, Viscosity, Density);
    }

    static void Near(double expected, double actual) => Assert.Equal(expected, actual, Rounding * Math.Abs(expected));
}

using FlowCalc.Networks;
using FlowCalc.Tests.Networks;

namespace FlowCalc.Tests.ClosedForms.Networks;

/// <summary>One tube and small trees of a gas or a flashing liquid, against closed forms and nested bisections derived for the purpose; friction factors are given, so that friction is a constant coefficient.</summary>
public sealed class CompressibleTubeTests
{
    const double Ambient = 101_325;

    // An outlet this large holds no pressure: the tube's end is choked, or at the pressure of the surroundings.
    const double Open = 1;

    [Fact]
    public void Isothermal_gas_is_the_exact_pipe_formula()
    {
        // (p1² − p2²)/(2RT) = G²·(ln(p1/p2) + f·L/(2D)), at 50 and 30 bar.
        var path = new IsothermalPath(296.8, 293.15, 1.4, 3e6, 5e6, false);
        var flux = Solve(Single(0.008, 10, 0.02, 0, Open), path, 5e6).Steady.Flow[0] / Disc(0.008);
        Assert.Equal(2658.371472, flux, 2658.371472 * 1e-8);
    }

    [Fact]
    public void Isothermal_gas_chokes_at_the_tubes_end()
    {
        var path = new IsothermalPath(296.8, 293.15, 1.4, Ambient, 5e6, false);
        var state = Solve(Single(0.008, 10, 0.02, 0, Open), path, 5e6);
        Assert.True(state.IsChoked[0]);
        Assert.Equal(3127.265885, state.Steady.Flow[0] / Disc(0.008), 3127.265885 * 1e-8);
        Assert.Equal(922447.599, Math.Exp(state.EndLog[0]), 922447.599 * 1e-6);
    }

    [Fact]
    public void Flashing_liquid_chokes_at_the_tubes_end()
    {
        var path = new OmegaPath(1300, 1.5, 25e5, Ambient, 25e5, false);
        var state = Solve(Single(0.008, 6, 0.02, 2, Open), path, 25e5);
        Assert.Equal(11437.25359, state.Steady.Flow[0] / Disc(0.008), 11437.25359 * 1e-8);
        Assert.Equal(614279.0561, Math.Exp(state.EndLog[0]), 614279.0561 * 1e-6);
    }

    [Fact]
    public void Flashing_liquid_that_does_not_choke_ends_at_the_pressure_outside()
    {
        var path = new OmegaPath(1300, 1.5, 25e5, 12e5, 25e5, false);
        Assert.Equal(10910.32907, Solve(Single(0.008, 6, 0.02, 2, Open), path, 25e5).Steady.Flow[0] / Disc(0.008), 10910.32907 * 1e-7);
    }

    [Fact]
    public void Inert_gas_divides_between_two_choked_nozzles()
    {
        var tree = new Tree();
        var root = tree.Add(-1, 0.008, 4, 0.02, 0);
        tree.Nozzle(tree.Add(root, 0.006, 3, 0.022, 0), 0.85 * Disc(0.002));
        tree.Nozzle(tree.Add(root, 0.006, 6, 0.022, 0), 0.85 * Disc(0.0025));
        var state = Solve(tree, new IsothermalPath(296.8, 288.15, 1.4, Ambient, 4e6, false), 4e6);
        Near(0.02357155932, state.Steady.Flow[1]);
        Near(0.03401284808, state.Steady.Flow[2]);
        Near(3856081.105, Math.Exp(state.Log[0]));
        Near(3769992.58, Math.Exp(state.Log[1]));
        Near(3481570.193, Math.Exp(state.Log[2]));
    }

    [Fact]
    public void Flashing_liquid_divides_between_four_choked_nozzles()
    {
        var tree = new Tree();
        var root = tree.Add(-1, 0.010, 1.5, 0.020, 1.0);
        var a = tree.Add(root, 0.008, 1, 0.021, 1.2);
        var b = tree.Add(root, 0.008, 3, 0.021, 1.2);
        tree.Nozzle(tree.Add(a, 0.006, 0.8, 0.024, 1.3), 0.8 * Disc(0.003));
        tree.Nozzle(tree.Add(a, 0.006, 2, 0.024, 1.3), 0.8 * Disc(0.003));
        tree.Nozzle(tree.Add(b, 0.006, 0.5, 0.024, 1.3), 0.8 * Disc(0.0025));
        tree.Nozzle(tree.Add(b, 0.005, 1, 0.026, 1.3), 0.7 * Disc(0.003));
        var state = Solve(tree, new OmegaPath(1300, 1.5, 25e5, Ambient, 20e5, false), 20e5);
        Near(0.4332884808, state.Steady.Flow[0]);
        Near(0.1237060557, state.Steady.Flow[3]);
        Near(0.1200966528, state.Steady.Flow[4]);
        Near(0.08643200045, state.Steady.Flow[5]);
        Near(0.1030537719, state.Steady.Flow[6]);
        Near(1932585.339, Math.Exp(state.Log[0]));
    }

    [Fact]
    public void A_branch_with_an_oversize_outlet_chokes_at_its_tubes_end()
    {
        var tree = new Tree();
        var root = tree.Add(-1, 0.008, 2, 0.021, 1.2);
        tree.Nozzle(tree.Add(root, 0.006, 1, 0.024, 1.3), 1e-4);
        tree.Nozzle(tree.Add(root, 0.006, 2.5, 0.024, 1.3), 3.926990816987242e-06);
        var state = Solve(tree, new OmegaPath(1300, 1.5, 25e5, Ambient, 20e5, false), 20e5);
        Near(0.3363663495, state.Steady.Flow[1]);
        Near(0.07814032319, state.Steady.Flow[2]);
        Near(1730122.809, Math.Exp(state.Log[0]));
        Near(638945.9438, Math.Exp(state.EndLog[1]), 1e-6);
        Near(295330.8641, Math.Exp(state.Log[1]), 1e-6);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.4)]
    [InlineData(0.9)]
    public void Speeding_up_and_slowing_down_without_friction_costs_nothing(double part)
    {
        // Wide, narrow, wide: the nozzle behind has the pressure of the bottle.
        var path = new IsothermalPath(296.8, 293.15, 1.4, Ambient, 5e6, true);
        var tree = new Tree();
        var wide = tree.Add(-1, 0.02, 0, 0, 0);
        var narrow = tree.Add(wide, 0.006, 0, 0, 0);
        tree.Nozzle(tree.Add(narrow, 0.02, 0, 0, 0), part * 0.85 * Disc(0.006));
        var state = Solve(tree, path, 5e6);
        Near(5e6, Math.Exp(state.Log[2]), 1e-10);
    }

    [Theory]
    [InlineData(4, false)]
    [InlineData(-4, false)]
    [InlineData(4, true)]
    public void Gas_that_hardly_moves_thins_out_with_height_by_the_barometric_formula(double rise, bool hasHeads)
    {
        var tree = new Tree();
        var point = tree.Add(-1, 0.02, 0, 0, 0);
        for (var i = 0; i < 100; i++) point = tree.Add(point, 0.02, 0, 0, 0, rise);
        tree.Nozzle(point, 1e-9);
        var state = Solve(tree, new IsothermalPath(296.8, 293.15, 1.4, Ambient, 5e6, hasHeads), 5e6);
        Near(5e6 * Math.Exp(-9.80665 * 100 * rise / (296.8 * 293.15)), Math.Exp(state.Log[point]));
    }

    [Theory]
    [InlineData(4)]
    [InlineData(-4)]
    public void Gas_at_rest_thins_out_with_height_by_the_barometric_formula(double rise)
    {
        var tree = new Tree();
        var point = tree.Add(-1, 0.02, 0, 0, 0);
        for (var i = 0; i < 100; i++) point = tree.Add(point, 0.02, 0, 0, 0, rise);
        var state = Solve(tree, new IsothermalPath(296.8, 293.15, 1.4, Ambient, 5e6, true), 5e6);
        // Each run is taken as heavy as at its start, an error of the first order: half of 4 m over 8.9 km of scale height, times the drop.
        var drop = 9.80665 * 100 * rise / (296.8 * 293.15);
        Assert.Equal(0, state.Steady.Flow[point]);
        Assert.Equal(Math.Log(5e6) - drop, state.Log[point], Math.Abs(drop) * 5e-4);
    }

    [Fact]
    public void A_nozzle_higher_than_the_pressure_can_lift_stays_dry_and_the_rest_flows_as_if_it_were_capped()
    {
        // 2 bar lift a liquid of 1300 kg/m³ some 16 m, and one that thins out as it boils not 60 m.
        var path = new OmegaPath(1300, 1.5, 3e5, Ambient, 3e5, true);
        var (tree, capped) = (new Tree(), new Tree());
        var (root, only) = (tree.Add(-1, 0.008, 2, 0.02, 1), capped.Add(-1, 0.008, 2, 0.02, 1));
        var high = root;
        for (var i = 0; i < 12; i++) high = tree.Add(high, 0.006, 5, 0.02, 0, rise: 5);
        tree.Nozzle(high, 2e-6);
        var low = tree.Add(root, 0.006, 1, 0.02, 0);
        tree.Nozzle(low, 2e-6);
        capped.Nozzle(capped.Add(only, 0.006, 1, 0.02, 0), 2e-6);

        var state = Solve(tree, path, 3e5);

        Assert.Equal([true, false], state.Steady.IsClosed);
        Assert.Equal(0, state.Steady.Flow[high]);
        Near(Solve(capped, path, 3e5).Steady.Flow[0], state.Steady.Flow[low]);
    }

    static void Near(double expected, double actual, double part = 1e-7) => Assert.Equal(expected, actual, expected * part);

    static double Disc(double diameter) => Math.PI / 4 * diameter * diameter;

    static Tree Single(double bore, double length, double friction, double coefficient, double outlet)
    {
        var tree = new Tree();
        tree.Nozzle(tree.Add(-1, bore, length, friction, coefficient), outlet);
        return tree;
    }

    static CompressibleState Solve<TPath>(Tree tree, TPath path, double pressure) where TPath : struct, ICompressiblePath
    {
        var state = new CompressibleState(tree.Builder.Build(), [.. tree.Areas]);
        var report = CompressibleSolver.Solve(state, path, pressure, CompressibleSolver.Tight, TestContext.Current.CancellationToken);
        Assert.True(report.Converged, report.Failure);
        Assert.InRange(report.MassResidual, 0, 1e-10);
        Assert.InRange(report.PressureResidual, 0, 1e-8 * pressure);
        return state;
    }

    sealed class Tree
    {
        public NetworkBuilder Builder { get; } = new(8);

        public List<double> Areas { get; } = [];

        public int Add(int parent, double bore, double length, double friction, double coefficient, double rise = 0)
        {
            Areas.Add(Disc(bore));
            return Builder.AddRun(parent, new(bore, 0, 0, rise, (friction * length / bore + coefficient) * Resistance.PerCoefficient(bore)));
        }

        public void Nozzle(int point, double area) => Builder.AddNozzle(point, area);
    }
}

using FlowCalc.Losses;

namespace FlowCalc.Tests.ClosedForms.Losses;

public class BoreClosedFormTests
{
    [Theory]
    [InlineData(0.2)]
    [InlineData(0.6)]
    [InlineData(0.95)]
    public void Expansion_is_the_balance_of_momentum_and_energy(double boreRatio)
    {
        // The smaller bore's pressure acts on the whole face of the step: (p2 − p1) A2 = ρ v1 A1 (v1 − v2).
        const double density = 998, velocity = 3;
        var areaRatio = boreRatio * boreRatio;
        var slower = velocity * areaRatio;
        var rise = density * velocity * areaRatio * (velocity - slower);
        var lost = density / 2 * (velocity * velocity - slower * slower) - rise;

        Assert.Equal(lost, LossCoefficient.PressureDrop(BoreChange.Expansion(boreRatio), density, velocity), tolerance: 1e-10);
    }

    [Fact]
    public void Contraction_from_a_vessel_is_a_flush_entrance_and_into_the_same_bore_nothing()
    {
        Assert.Equal(TubeInlet.SquareCut, BoreChange.SharpContraction(0), tolerance: 5e-4);
        Assert.Equal(0, BoreChange.SharpContraction(1), tolerance: 1e-15);
        Assert.Equal(1, BoreChange.Expansion(0), tolerance: 0);
    }

    [Fact]
    public void Coefficient_brought_to_another_bore_loses_the_same_pressure()
    {
        const double flow = 1e-4, narrow = 0.006, wide = 0.008, density = 998;
        double Velocity(double bore) => flow / (Math.PI / 4 * bore * bore);

        var onWide = LossCoefficient.OnBore(1.7, narrow, wide);

        Assert.Equal(1.7 * Math.Pow(4.0 / 3, 4), onWide, tolerance: 1e-12);
        var expected = LossCoefficient.PressureDrop(1.7, density, Velocity(narrow));
        Assert.Equal(expected, LossCoefficient.PressureDrop(onWide, density, Velocity(wide)), tolerance: 1e-12 * expected);
    }

    // Two to three figures worked by hand from the contraction, the expansion and b⁴.
    [Theory]
    [InlineData(0.9, 0.20, 0.005)]
    [InlineData(0.8, 0.88, 0.005)]
    [InlineData(0.7, 2.5, 0.05)]
    [InlineData(0.5, 16.9, 0.05)]
    public void Long_fitting_of_tighter_bore_has_the_coefficient_worked_by_hand(double boreRatio, double expected, double halfDigit)
    {
        Assert.Equal(expected, ReducedBore.Loss(boreRatio, 2).Constant, tolerance: halfDigit);
        Assert.Equal(ReducedBore.Loss(boreRatio, 2).Constant, ReducedBore.Loss(boreRatio, 40).Constant, tolerance: 0);
    }

    // Idelchik's thick orifice, evaluated apart from this code; between the table's points τ lies on a straight line.
    [Theory]
    [InlineData(0.5, 0, 29.99072044325218)]
    [InlineData(0.5, 0.1, 29.290487439252026)]
    [InlineData(0.8, 0.7, 1.2612200492220265)]
    [InlineData(0.7, 1.4, 2.529832043607442)]
    [InlineData(0.8, 1.8, 0.9107008130237033)]
    public void Short_fitting_of_tighter_bore_is_a_thick_orifice(double boreRatio, double lengthOverBore, double expected) =>
        Assert.Equal(expected, ReducedBore.Loss(boreRatio, lengthOverBore).Constant, tolerance: 1e-12 * expected);

    [Theory]
    [InlineData(0, 1.35)]
    [InlineData(0.2, 1.22)]
    [InlineData(0.4, 1.10)]
    [InlineData(0.6, 0.84)]
    [InlineData(0.8, 0.42)]
    [InlineData(1, 0.24)]
    [InlineData(1.2, 0.16)]
    [InlineData(1.6, 0.07)]
    public void Thick_orifice_meets_the_tables_points(double lengthOverBore, double tau)
    {
        const double boreRatio = 0.6, rest = 1 - boreRatio * boreRatio;

        var onOwnHead = ReducedBore.Loss(boreRatio, lengthOverBore).Constant * Math.Pow(boreRatio, 4);

        Assert.Equal(tau, (onOwnHead - 0.5 * Math.Pow(rest, 0.75) - rest * rest) / Math.Pow(rest, 1.375), tolerance: 1e-12);
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(10)]
    public void Friction_of_the_fitting_counts_its_length_on_the_head_of_its_own_bore(double lengthOverBore) =>
        Assert.Equal(lengthOverBore / Math.Pow(0.8, 4), ReducedBore.Loss(0.8, lengthOverBore).PerFriction, tolerance: 1e-12);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(5)]
    public void Fitting_as_wide_as_the_tube_has_friction_alone(double lengthOverBore)
    {
        var (constant, perFriction) = ReducedBore.Loss(1, lengthOverBore);

        Assert.Equal(0, constant, tolerance: 1e-15);
        Assert.Equal(lengthOverBore, perFriction, tolerance: 0);
    }

    // 30 %, or 0.1 where the loss is small: at b = 0.9 the two authors' contractions alone differ by half.
    [Fact]
    public void Two_forms_of_a_tighter_bore_meet_within_the_spread_of_their_authors() =>
        Assert.All([0.5, 0.6, 0.7, 0.8, 0.9], boreRatio =>
        {
            var atTwoBores = ReducedBore.Loss(boreRatio, 2).Constant;
            Assert.Equal(atTwoBores, ReducedBore.Loss(boreRatio, Math.BitDecrement(2)).Constant, tolerance: Math.Max(0.3 * atTwoBores, 0.1));
        });
}

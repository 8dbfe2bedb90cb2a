using FlowCalc.Mounts;
using FlowCalc.Stock;

namespace FlowCalc.Tests.Published.Mounts;

/// <summary>Bolts and threads against printed figures, from memory where not said otherwise: no text was at hand.</summary>
public class BoltTests
{
    // J. E. Shigley, Mechanical Engineering Design, example of a bar on four bolts in eccentric shear: 16 kN at 425 mm from the group's middle, bolts at ±75 and ±60 mm.
    [Fact]
    public void Eccentric_bar_on_four_bolts_is_shigleys_example()
    {
        var shares = new BoltGroup([(-0.075, -0.06), (-0.075, 0.06), (0.075, -0.06), (0.075, 0.06)]).Shares(new(0.425, 0, 0));
        var force = new Direction(0, -16_000, 0);

        Assert.Equal([14.8, 14.8, 21.0, 21.0], shares.Select(share => share.Shear(force) / 1e3), (printed, own) => Math.Abs(printed - own) <= 0.05);
        Assert.All(shares, share => Assert.Equal(0, share.AlongZ.Dot(force), tolerance: 1e-9));
    }

    // Resistances of class 8.8 in the design tables to Eurocode 3 of the Steel Construction Institute (P363), kN, printed to three figures.
    [Theory]
    [InlineData(157, 60.3, 90.4)]
    [InlineData(245, 94.1, 141)]
    [InlineData(353, 136, 203)]
    public void Resistance_of_class_8_8_is_that_of_design_tables(double stressAreaSquareMillimetres, double shearKilonewtons, double tensionKilonewtons)
    {
        var area = stressAreaSquareMillimetres * 1e-6;

        Assert.Equal(shearKilonewtons, BoltResistance.Shear(0.6, 800e6, area) / 1e3, tolerance: shearKilonewtons * 0.005);
        Assert.Equal(tensionKilonewtons, BoltResistance.Tension(800e6, area, isCountersunk: false) / 1e3, tolerance: tensionKilonewtons * 0.005);
    }

    // EN 1993-1-8 table 3.4 (seen second-hand), worked by an independent script: M6 8.8, and its head and a washer of 30 mm on 0.8 mm of sheet with 270 MPa.
    [Fact]
    public void Bolt_and_sheet_of_the_worked_example()
    {
        Assert.Equal(7718.4, BoltResistance.Shear(0.6, 800e6, 20.1e-6), tolerance: 1e-6);
        Assert.Equal(11577.6, BoltResistance.Tension(800e6, 20.1e-6, isCountersunk: false), tolerance: 1e-6);
        Assert.Equal(3550.3516, BoltResistance.PullThrough(0.0109, 0.0008, 270e6), tolerance: 1e-3);
        Assert.Equal(9771.6098, BoltResistance.PullThrough(0.030, 0.0008, 270e6), tolerance: 1e-3);
    }

    // ISO 724, basic pitch diameters, mm.
    [Theory]
    [InlineData("M4", 3.545)]
    [InlineData("M5", 4.480)]
    [InlineData("M6", 5.350)]
    [InlineData("M8", 7.188)]
    [InlineData("M10", 9.026)]
    [InlineData("M12", 10.863)]
    public void Pitch_diameter_is_the_standards(string id, double millimetres)
    {
        var size = BoltCatalogue.FindSize(id)!;

        Assert.Equal(millimetres, ThreadStripping.PitchDiameter(size.Diameter.Meters, size.Pitch.Meters) * 1e3, tolerance: 0.0006);
        // The table's area is that of the formula, to the three figures that ISO 898-1 prints.
        Assert.Equal(size.StressArea.SquareMillimeters, ThreadStripping.StressArea(size.Diameter.Meters, size.Pitch.Meters) * 1e6, tolerance: size.StressArea.SquareMillimeters * 0.003);
    }

    // A worked example of trade practice, by an independent script: the thread that lets an M6 8.8 break first.
    [Theory]
    [InlineData(215, 14.8499)]
    [InlineData(400, 7.9818215)]
    public void Thread_that_outlasts_the_bolt_is_the_worked_example(double tensileMegapascals, double millimetres) =>
        Assert.Equal(millimetres, ThreadStripping.LengthFor(0.006, 0.001, 16_100, tensileMegapascals * 1e6) * 1e3, tolerance: 1e-4);

    // FED-STD-H28 and Alexander: the nominal shear area of an inside thread is 0.875·π·d a length; half the pitch cylinder is on the safe side of it.
    [Fact]
    public void Half_the_pitch_cylinder_is_on_the_safe_side_of_the_full_formula() =>
        Assert.All(BoltCatalogue.Sizes, size =>
            Assert.InRange(ThreadStripping.PitchDiameter(size.Diameter.Meters, size.Pitch.Meters) / 2 / (0.875 * size.Diameter.Meters), 0.4, 0.6));

    // ISO 898-1: proof load and least tensile load of coarse threads, N, seen second-hand.
    [Theory]
    [InlineData("M5", "8.8", 8_230, 11_350)]
    [InlineData("M6", "8.8", 11_600, 16_100)]
    [InlineData("M8", "8.8", 21_200, 29_200)]
    [InlineData("M10", "8.8", 33_700, 46_400)]
    [InlineData("M6", "10.9", 16_700, 20_900)]
    [InlineData("M12", "12.9", 81_800, 103_000)]
    public void Loads_are_those_of_the_standard(string size, string strength, double proof, double tensile)
    {
        var loads = BoltCatalogue.LoadsOf(BoltCatalogue.FindSize(size)!, BoltCatalogue.FindClass(strength)!);

        Assert.Equal((proof, tensile), (loads.Proof.Newtons, loads.Tensile.Newtons));
    }

    // Stresses are from memory and loads second-hand: they agree within what the standard rounds.
    [Fact]
    public void Every_load_is_its_stress_times_its_area_within_a_hundredth() =>
        Assert.All(BoltCatalogue.Sizes.SelectMany(size => BoltCatalogue.Classes.Select(strength => (size, strength))), one =>
        {
            var (proof, tensile) = BoltCatalogue.LoadsOf(one.size, one.strength);
            Assert.Equal(1, proof.Newtons / (one.size.StressArea.SquareMeters * one.strength.Proof.Pascals), tolerance: 0.012);
            Assert.Equal(1, tensile.Newtons / (one.size.StressArea.SquareMeters * one.strength.Tensile.Pascals), tolerance: 0.012);
            Assert.True(one.strength.Proof <= one.strength.Yield && one.strength.Yield < one.strength.Tensile);
        });
}

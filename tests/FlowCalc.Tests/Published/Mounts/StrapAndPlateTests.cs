using FlowCalc.Mounts;

namespace FlowCalc.Tests.Published.Mounts;

/// <summary>Belts and plates against printed figures, from memory: no text was at hand.</summary>
public class StrapAndPlateTests
{
    // F. P. Beer and E. R. Johnston, Vector Mechanics for Engineers: Statics, sample problem of a hawser round a bollard: two turns hold 7500 N with 150 N, so μ = 0.311; three hold 52.9 kN.
    [Fact]
    public void Hawser_round_a_bollard_is_beer_and_johnstons_sample_problem()
    {
        var friction = Math.Log(7_500.0 / 150) / (4 * Math.PI);

        Assert.Equal(0.311, friction, tolerance: 0.0005);
        Assert.Equal(7_500, 150 * StrapStatics.TensionRatio(friction, 4 * Math.PI), tolerance: 1e-6);
        Assert.Equal(52.9, 150 * StrapStatics.TensionRatio(friction, 6 * Math.PI) / 1e3, tolerance: 0.3);
    }

    // A worked example of trade practice: 50 N through 270° of bends at a friction of 0.15.
    [Fact]
    public void Cable_through_bends_is_the_worked_example() => Assert.Equal(101.38056, 50 * StrapStatics.TensionRatio(0.15, 1.5 * Math.PI), tolerance: 1e-4);

    // R. T. Douty and W. McGuire (1965), as design handbooks have it: Q = 3/8·(b/a)·F, for a foot as long behind the bolt as before it.
    [Fact]
    public void Prying_of_a_foot_as_long_behind_as_before_is_three_eighths() => Assert.Equal(3.0 / 8, PlateBending.Prying(0.02, 0.02), tolerance: 1e-12);

    // S. Timoshenko and S. Woinowsky-Krieger: a clamped disc with a force in its middle has the moment P/4π at its rim, whatever its size; the stress is 6·M/t².
    [Fact]
    public void Clamped_disc_has_timoshenkos_moment_at_its_rim()
    {
        const double t = 0.002;
        // With so wide a load the middle is milder than the rim: 1.3·(ln(1/0.6) + 0.09) is under 0.82.
        var stress = PlateBending.ClampedDisc(0.2, 0.12, t);

        Assert.Equal(6 / (4 * Math.PI) * (1 - 0.36 / 2) / (t * t), stress, tolerance: stress * 1e-9);
    }
}

using FlowCalc.Losses;

namespace FlowCalc.Tests.Peers.Losses;

/// <summary>Friction factors against the open library fluids 1.3.1, which solves the same equations; see <see cref="PeerTable"/>.</summary>
public class FrictionPeerTests
{
    public static IEnumerable<object[]> Turbulent => PeerTable.Read("friction-turbulent", "reynolds", "relative_roughness", "darcy_factor");

    public static IEnumerable<object[]> Laminar => PeerTable.Read("friction-laminar", "reynolds", "darcy_factor");

    public static IEnumerable<object[]> Rough => PeerTable.Read("friction-rough", "relative_roughness", "darcy_factor");

    public static IEnumerable<object[]> Curved => PeerTable.Read("friction-curved", "reynolds", "radius_over_bore", "darcy_factor");

    // Both solve Colebrook's equation to machine precision; the library's test suite confirms the case of Re 1.048e11 in arbitrary precision.
    [Theory]
    [MemberData(nameof(Turbulent))]
    public void Turbulent_factor_is_the_peers(double reynolds, double relativeRoughness, double peer) =>
        Assert.Equal(peer, DarcyFriction.Factor(reynolds, relativeRoughness), tolerance: 1e-12 * peer);

    [Theory]
    [MemberData(nameof(Laminar))]
    public void Laminar_factor_is_the_peers(double reynolds, double peer) =>
        Assert.Equal(peer, DarcyFriction.Factor(reynolds, 0.01), tolerance: 1e-14 * peer);

    // The peer gives the limit of no viscosity; at Re 1e18 the difference to it is below 1e-11.
    [Theory]
    [MemberData(nameof(Rough))]
    public void Fully_rough_factor_is_the_peers(double relativeRoughness, double peer) =>
        Assert.Equal(peer, DarcyFriction.Turbulent(1e18, relativeRoughness), tolerance: 1e-11 * peer);

    [Theory]
    [MemberData(nameof(Curved))]
    public void Laminar_factor_of_a_curved_tube_is_the_peers(double reynolds, double radiusOverBore, double peer) =>
        Assert.Equal(peer, CurvedTube.Factor(reynolds, radiusOverBore), tolerance: 1e-12 * peer);

    // Figures printed in the library's documentation and test suite, to the digits printed there.
    [Fact]
    public void Colebrook_at_Re_1e5_and_1e_minus_4_is_the_figure_of_the_peers_test_suite() =>
        Assert.Equal(0.018513866077471648, DarcyFriction.Turbulent(1e5, 1e-4), tolerance: 1e-12);

    [Fact]
    public void Colebrook_in_the_hard_case_is_the_figure_checked_by_the_peer_in_arbitrary_precision() =>
        Assert.Equal(0.0037751087365340036, DarcyFriction.Turbulent(104_800_000_000, 2.55e-8), tolerance: 1e-9 * 0.003775);

    [Fact]
    public void Laminar_factor_at_Re_128_is_the_figure_of_the_peers_test_suite() =>
        Assert.Equal(0.5, DarcyFriction.Laminar(128), tolerance: 1e-12);
}

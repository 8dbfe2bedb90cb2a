using FlowCalc.Circuits;

namespace FlowCalc.Tests.Published.Circuits;

/// <summary>
/// Two worked examples of an unbalanced Wheatstone bridge from Indian school books, as solved on public pages (seen): 100, 10, 5 and 60 Ω round the bridge, a galvanometer of 15 Ω and 10 V
/// across it give 4.87 mA; and the balance of 2, 4, 4 and 8 Ω, whose page prints 1.071 A by mistake, gives nothing.
/// </summary>
public class BridgeExampleTests
{
    // A, B, C, D round the bridge; the galvanometer between B and D, the source between C and A.
    static double Galvanometer(double ab, double bc, double cd, double da, double galvanometer, double volts) =>
        ResistiveNetwork.Solve(4, [new(2, 0, 0, volts), new(0, 1, ab), new(1, 2, bc), new(2, 3, cd), new(3, 0, da), new(1, 3, galvanometer)])!.Currents[5];

    [Fact]
    public void The_current_through_the_galvanometer_is_the_printed_one() =>
        Assert.Equal(4.87e-3, Math.Abs(Galvanometer(100, 10, 5, 60, 15, 10)), tolerance: 0.005e-3);   // three figures

    [Fact]
    public void It_is_that_of_the_exact_fraction() => Assert.Equal(2 / 410.5, Math.Abs(Galvanometer(100, 10, 5, 60, 15, 10)), tolerance: 1e-14);

    [Fact]
    public void A_balanced_bridge_has_none() => Assert.Equal(0, Galvanometer(2, 4, 8, 4, 10, 5), tolerance: 1e-14);
}

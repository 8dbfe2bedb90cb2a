using FlowCalc.Circuits;
using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Tests.Published.Circuits;

/// <summary>
/// AWG sizes and resistances per 1000 ft at 20 °C as printed in a table of the HyperPhysics pages (Georgia State University; seen), diameters in inches, and those at 75 °C of uncoated solid
/// copper in chapter 9 table 8 of NFPA 70 (from memory).
/// </summary>
public class WireTableTests
{
    const double Inch = 0.0254, ThousandFeet = 304.8;

    [Theory]
    [InlineData(0, 0.32485, 0.0983)]
    [InlineData(4, 0.20431, 0.2485)]
    [InlineData(8, 0.12849, 0.6282)]
    [InlineData(10, 0.10189, 0.9989)]
    [InlineData(12, 0.0808, 1.588)]
    [InlineData(14, 0.06408, 2.525)]
    [InlineData(16, 0.05082, 4.016)]
    [InlineData(18, 0.0403, 6.385)]
    [InlineData(20, 0.03196, 10.15)]
    [InlineData(24, 0.0201, 25.67)]
    [InlineData(30, 0.01002, 103.2)]
    [InlineData(36, 0.005, 414.8)]
    [InlineData(40, 0.00314, 1049)]
    public void A_gauge_has_the_printed_diameter_and_resistance(int gauge, double inches, double ohms)
    {
        Assert.Equal(inches, AmericanWireGauge.Diameter(gauge) / Inch, tolerance: 2.5e-3 * inches);   // three figures of the thinnest
        Assert.Equal(ohms, AmericanWireGauge.OhmsPerMetre(gauge) * ThousandFeet, tolerance: 2e-3 * ohms);   // the table's own resistivity is not printed
    }

    [Theory]
    [InlineData(18, 7.77)]
    [InlineData(16, 4.89)]
    [InlineData(14, 3.07)]
    [InlineData(12, 1.93)]
    [InlineData(10, 1.21)]
    [InlineData(8, 0.764)]
    public void A_warm_gauge_has_the_resistance_that_the_electrical_code_prints(int gauge, double ohms)
    {
        var make = new WireMake(Length.FromMeters(ThousandFeet), null, gauge, CableKind.Flexible, Temperature.FromDegreesCelsius(75), WireMake.Copper);

        Assert.Equal(ohms, make.Resistance.Ohms, tolerance: 0.005 * ohms);   // three figures
    }

    // A page on drop in car cables (ohmicaudio.com, seen): 100 A over 15 ft each way; its table has two figures an ohm.
    [Theory]
    [InlineData(4, 0.75, 0.01)]
    [InlineData(2, 0.48, 0.03)]
    [InlineData(0, 0.30, 0.02)]
    public void The_drop_over_a_car_cable_is_the_printed_one(int gauge, double volts, double part) =>
        Assert.Equal(volts, 100 * AmericanWireGauge.OhmsPerMetre(gauge) * 2 * 15 * 0.3048, tolerance: part * volts);

    // IEC 60228 class 5, plain and tinned copper, as reprinted second-hand.
    [Theory]
    [InlineData("flexible", 0.5, 39.0, 40.1)]
    [InlineData("flexible", 0.75, 26.0, 26.7)]
    [InlineData("flexible", 1.5, 13.3, 13.7)]
    [InlineData("flexible", 10, 1.91, 1.95)]
    public void A_flexible_wire_has_the_resistance_of_the_standard(string kind, double squareMillimetres, double plain, double tinned)
    {
        var size = WireSize.Find(kind, squareMillimetres * 1e-6)!;

        Assert.Equal(plain, size.OhmsPerMetre * 1e3, tolerance: 1e-9);
        Assert.Equal(tinned, size.TinnedOhmsPerMetre!.Value * 1e3, tolerance: 1e-9);
    }

    // Steps of three gauges double the resistance, of ten multiply it by ten: the well-known rule of thumb, within one per cent.
    [Fact]
    public void Three_gauges_double_the_resistance_and_ten_make_it_ten_times()
    {
        Assert.Equal(2, AmericanWireGauge.OhmsPerMetre(21) / AmericanWireGauge.OhmsPerMetre(18), tolerance: 0.01);
        Assert.Equal(10, AmericanWireGauge.OhmsPerMetre(28) / AmericanWireGauge.OhmsPerMetre(18), tolerance: 0.2);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(41)]
    public void A_gauge_outside_the_range_is_refused(int gauge) => Assert.Throws<ArgumentOutOfRangeException>(() => AmericanWireGauge.Diameter(gauge));
}

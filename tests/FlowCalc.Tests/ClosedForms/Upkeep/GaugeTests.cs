using FlowCalc.Tests.Upkeep;
using FlowCalc.Upkeep;

namespace FlowCalc.Tests.ClosedForms.Upkeep;

/// <summary>Gauge readings against the law of an ideal gas, which the bottle's own real gas follows within the part that is stated.</summary>
public class GaugeTests
{
    static readonly (string, string?)[] Bottle = [("/supply/bottle/volume", "\"4.2 L\"")];

    static double Gauge(double celsius) => UpkeepDocument.Solve("{}", celsius: celsius, edits: Bottle).Expected!.Pressure!.Value.Bars - 1.01325;

    // p2 = (p1 + patm − pv1)·(T2/T1)·(Vg1/Vg2) + pv2 − patm, water's density and vapour pressure from steam tables (from memory).
    [Theory]
    [InlineData(60, 16.90182)]
    [InlineData(5, 13.15563)]
    public void A_cushion_over_water_reads_what_gas_and_water_make_of_it(double celsius, double bar) => Assert.Equal(bar, Gauge(celsius), tolerance: 0.01 * bar);

    // Nitrogen at 200 bar is a few per cent off the ideal gas.
    [Fact]
    public void A_bottle_of_nitrogen_reads_some_per_cent_over_the_ideal_gas()
    {
        var warm = UpkeepDocument.Solve("{}", celsius: 50, edits: [("/agent", "\"nitrogen\""), ("/temperature", null),
            ("/supply/bottle", """{ "volume": "10 L", "chargePressure": "200 bar", "chargeTemperature": "15 °C" }""")]).Expected!.Pressure!.Value.Bars - 1.01325;

        Assert.InRange(warm, 224.416, 224.416 * 1.05);
    }

    // 11.4 bar at 0 °C against 14 bar at 20 °C, gas alone: 12.9757 bar expected, 12.1 % less; 12.4 bar is 4.4 % less.
    [Theory]
    [InlineData(11.4, 0.1214369)]
    [InlineData(12.4, 0.0443697)]
    public void A_reading_is_held_against_what_is_expected_at_its_own_temperature(double bar, double lost) =>
        Assert.Equal(lost, GaugeCheck.Loss(bar, 12.975729), tolerance: 1e-6);
}

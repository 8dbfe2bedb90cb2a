using System.Globalization;
using FlowCalc.Agents;
using FlowCalc.Bottles;

namespace FlowCalc.Tests.Peers.Bottles;

/// <summary>
/// Bottles of four agents under nitrogen at rest, by a separate evaluation of the same model (Raoult with Poynting, Henry, partial pressures); the model is the weak part, not its
/// evaluation. Rows flagged as liquid-full, near the critical point or rich in nitrogen have less footing still.
/// </summary>
public sealed class NitrogenEquilibriumTests
{
    /// <summary>Agent, flag, then fill kg/m³, charge bar gauge, °C, bar absolute, liquid part, dissolved and all nitrogen kg/m³, mole fraction.</summary>
    public static TheoryData<string, string, double[]> Rows
    {
        get
        {
            using var stream = typeof(NitrogenEquilibriumTests).Assembly.GetManifestResourceStream("Peers/Bottles/superpressure.csv")!;
            using var reader = new StreamReader(stream);
            Assert.StartsWith("agent,fill_kg_m3", reader.ReadLine());
            var rows = new TheoryData<string, string, double[]>();
            while (reader.ReadLine()?.Split(',') is [var agent, .. var figures, var flag])
                rows.Add(agent, flag, [.. figures.Select(figure => figure.Length == 0 ? double.NaN : double.Parse(figure, CultureInfo.InvariantCulture))]);
            return rows;
        }
    }

    // Only densities count: a bottle of a fifth of a litre is as one of a cubic metre.
    [Theory]
    [InlineData("HFC-227ea", 900)]
    [InlineData("HFC-125", 700)]
    [InlineData("HFC-236fa", 1000)]
    [InlineData("FK-5-1-12", 1100)]
    public void The_size_of_a_bottle_does_not_matter(string agent, double fill)
    {
        var model = new NitrogenEquilibrium(Fluid.Of(agent), NitrogenSolubility.Of(agent)!);
        var (small, large) = (model.Charge(2e-4, 2e-4 * fill, 293.15, 30e5), model.Charge(1, fill, 293.15, 30e5));
        foreach (var kelvin in (double[])[253.15, 293.15, 318.15])
        {
            var (first, second) = (model.Warmed(2e-4, 2e-4 * fill, small.Nitrogen, kelvin), model.Warmed(1, fill, large.Nitrogen, kelvin));
            Assert.Equal(second.Pressure, first.Pressure, tolerance: 1e-8 * second.Pressure);
            Assert.Equal(second.LiquidPart, first.LiquidPart, tolerance: 1e-8);
        }
        Assert.Equal(30e5, model.Warmed(2e-4, 2e-4 * fill, small.Nitrogen, 293.15).Pressure, tolerance: 30e5 * 1e-8);
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_bottle_at_rest_agrees(string agent, string flag, double[] expected)
    {
        var model = new NitrogenEquilibrium(Fluid.Of(agent), NitrogenSolubility.Of(agent)!);
        var charged = model.Charge(1, expected[0], 293.15, expected[1] * 1e5 + 101_325);
        Assert.Equal(expected[6], charged.Nitrogen, tolerance: 2e-3 + 1e-4 * expected[6]);
        var at = model.Warmed(1, expected[0], charged.Nitrogen, 273.15 + expected[2]);
        if (double.IsNaN(expected[3]))
        {
            Assert.True(at.Phase == BottlePhase.LiquidFull || double.IsNaN(at.Pressure));
            return;
        }
        var isWeak = flag.Contains("liquid-full", StringComparison.Ordinal) || flag.Contains("near-critical", StringComparison.Ordinal);
        Assert.Equal(expected[3], at.Pressure / 1e5, tolerance: isWeak ? 0.01 * expected[3] : 1e-3 + 2e-5 * expected[3]);
        Assert.Equal(expected[4], at.LiquidPart, tolerance: isWeak ? 5e-3 : 2e-4);
        Assert.Equal(expected[5], at.NitrogenInLiquid, tolerance: isWeak ? 0.05 * expected[5] : 1e-3 + 1e-4 * expected[5]);
        Assert.Equal(expected[7], at.NitrogenFraction, tolerance: isWeak ? 5e-3 : 4e-5);
    }
}

using FlowCalc.Discharge;
using FlowCalc.Layouts;
using FlowCalc.Tests.Flows;

namespace FlowCalc.Tests.Properties.Discharge;

/// <summary>What every discharge of a gas or a liquefied gas from a document keeps to.</summary>
public class ExpandingLayoutLaws
{
    const string Once = """ "cases": { "temperatures": ["20 °C"], "attitudes": [{ "name": "upright", "gravity": [0, 0, -1] }] }, """;

    [Theory]
    [MemberData(nameof(GasDocuments.Agents), MemberType = typeof(GasDocuments))]
    public void What_was_filled_in_is_delivered_or_left_and_the_band_holds_the_answer(string agent)
    {
        var (layout, result) = Solve(GasDocuments.Tree(agent, """ "cases": { "temperatures": ["20 °C", "45 °C", "-10 °C"] }, """));
        var contents = ((BottleSupply)layout.Supply).Bottle.Fill.Kilograms;

        Assert.Equal(3, result.Cases.Length);
        Assert.All(result.Cases, one =>
        {
            Assert.Null(one.Failure);
            Assert.Equal(contents, one.Nozzles.Sum(nozzle => nozzle.Mass.Kilograms) + one.LeftInBottle.Kilograms + one.LeftInTubes.Kilograms, tolerance: 1e-9 * contents);
            Assert.InRange(one.MassDefect, 0, 1e-9);
            Assert.Equal(1, one.Nozzles.Sum(nozzle => nozzle.Share), tolerance: 1e-9);
            Assert.All(one.Nozzles, nozzle => Assert.True(nozzle.Arrival < nozzle.Time95));
            Assert.All(one.Nozzles.Zip(one.Band!.Shares), pair => Assert.InRange(pair.First.Share, pair.Second.Low, pair.Second.High));
            if (one.Time95 is { } time) Assert.InRange(time.Seconds, one.Band!.Time95.Low!.Value.Seconds, one.Band.Time95.High?.Seconds ?? double.PositiveInfinity);
            Assert.NotNull(one.QuasiSteady);
            Assert.InRange(one.MostInTubes!.Value.Kilograms, 1e-4 * contents, 0.3 * contents);
        });
        // A warm bottle has more pressure and is quicker.
        Assert.True(result.Cases[1].StartPressure > result.Cases[0].StartPressure && result.Cases[0].StartPressure > result.Cases[2].StartPressure);
        Assert.True(Half(result.Cases[1]) < Half(result.Cases[2]));
    }

    // Twice the nozzles of half the area, twice the bottles of half the volume: the same times, in the limit of the same tubes.
    [Theory]
    [InlineData("HFC-227ea")]
    [InlineData("carbon-dioxide")]
    [InlineData("argon")]
    public void Two_bottles_are_as_one_of_twice_the_size(string agent)
    {
        var bottle = GasDocuments.All.Single(row => row.Agent == agent).Bottle;
        var doubled = bottle.Replace("8 L", "16 L", StringComparison.Ordinal).Replace("7 kg", "14 kg", StringComparison.Ordinal).Replace("5.4 kg", "10.8 kg", StringComparison.Ordinal);
        const string adiabatic = ", \"cushionHeat\": \"adiabatic\"";
        var (_, two) = Solve(GasDocuments.Tree(agent, Once, adiabatic + ", \"count\": 2"));
        var (_, one) = Solve(GasDocuments.Tree(agent, Once, adiabatic).Replace(bottle, doubled, StringComparison.Ordinal));

        Assert.Equal(one.Cases[0].End.Seconds, two.Cases[0].End.Seconds, tolerance: 0.02 * one.Cases[0].End.Seconds);
        Assert.Equal(Half(one.Cases[0]), Half(two.Cases[0]), tolerance: 2e-3 * Half(one.Cases[0]));
        Assert.Equal(one.Cases[0].Nozzles[2].Share, two.Cases[0].Nozzles[2].Share, tolerance: 1e-3);
    }

    [Fact]
    public void The_order_of_points_and_runs_does_not_matter()
    {
        var json = GasDocuments.Tree("carbon-dioxide", Once);
        const string a = """{ "id": "A", "kind": "nozzle", "orifice": { "diameter": "2.5 mm", "dischargeCoefficient": 0.8, "count": 2 } }""";
        var c = a.Replace("\"A\"", "\"C\"", StringComparison.Ordinal);
        var turned = json.Replace(a, "?", StringComparison.Ordinal).Replace(c, a, StringComparison.Ordinal).Replace("?", c, StringComparison.Ordinal);
        var (layout, straight) = Solve(json);
        var (other, swapped) = Solve(turned);

        double Share(Layout of, DischargeResult result, string id) => result.Cases[0].Nozzles.Single(nozzle => of.Points[nozzle.Point].Id == id).Share;
        Assert.All(["A", "B", "C"], id => Assert.Equal(Share(layout, straight, id), Share(other, swapped, id), tolerance: 1e-9));
        Assert.Equal(Half(straight.Cases[0]), Half(swapped.Cases[0]), tolerance: 1e-9);
    }

    // Adiabatic, then heat from a steel shell, then a shell that keeps its temperature: more heat, more pressure, a quicker discharge and less left.
    [Fact]
    public void Heat_from_the_shell_makes_a_gas_quicker_and_leaves_less()
    {
        DischargeCase With(string heat) => Solve(GasDocuments.Tree("nitrogen", Once, heat)).Result.Cases[0];
        var adiabatic = With(", \"cushionHeat\": \"adiabatic\"");
        var steel = With(", \"wall\": { \"material\": \"steel\", \"thickness\": \"6 mm\" }");
        var isothermal = With(", \"cushionHeat\": \"isothermal\"");

        Assert.True(isothermal.ColdestGas > steel.ColdestGas && steel.ColdestGas > adiabatic.ColdestGas);
        Assert.True(isothermal.LeftInBottle < steel.LeftInBottle && steel.LeftInBottle < adiabatic.LeftInBottle);
        Assert.Equal(293.15, isothermal.ColdestGas!.Value.Kelvins, tolerance: 1e-3);
    }

    // On its head a bottle gives its vapour, slowly, and most of it stays; upright it gives its liquid.
    [Theory]
    [InlineData("carbon-dioxide")]
    [InlineData("HFC-227ea")]
    public void Upside_down_a_bottle_with_a_dip_tube_gives_its_vapour_first(string agent)
    {
        const string both = """ "cases": { "temperatures": ["20 °C"], "attitudes": [{ "name": "upright", "gravity": [0, 0, -1] }, { "name": "roof", "gravity": [0, 0, 1] }] }, """;
        var (_, result) = Solve(GasDocuments.Tree(agent, both, """, "shape": { "diameter": "150 mm", "length": "453 mm" }, "outlet": { "dipTube": { "bore": "16 mm", "length": "445 mm" } }"""));
        var (upright, roof) = (result.Cases[0], result.Cases[1]);

        Assert.Null(roof.Failure);
        Assert.True(upright.OutOfReach < 0.05 && roof.OutOfReach == 1);
        Assert.Null(roof.LiquidEnd);
        Assert.True(roof.PeakMassFlow < upright.PeakMassFlow);
        Assert.True(roof.LeftInBottle > upright.LeftInBottle);
    }

    [Fact]
    public void A_gas_is_asked_upright_alone_even_in_a_competition_car()
    {
        var (_, result) = Solve(GasDocuments.Tree("IG-541", """ "application": "motorsport", """));

        Assert.All(result.Cases, one => Assert.Equal("upright", one.Attitude.Name));
        Assert.Equal(4, Solve(GasDocuments.Tree("HFC-236fa", """ "application": "motorsport", "cases": { "temperatures": ["20 °C"] }, """)).Result.Cases.Length);
    }

    [Fact]
    public void The_hottest_case_by_default_is_one_that_the_agent_is_answered_for()
    {
        var (layout, result) = Solve(GasDocuments.Tree("HFC-125"));

        Assert.Equal(layout.Agent.HighestTemperature, result.Cases.Max(one => one.Temperature.Kelvins));
        Assert.All(result.Cases, one => Assert.Null(one.Failure));
    }

    static double Half(DischargeCase one)
    {
        var series = one.Series!;
        for (var i = 1; i < series.Time.Length; i++)
        {
            var (before, now) = (series.LiquidInBottle[i - 1].Kilograms, series.LiquidInBottle[i].Kilograms);
            var half = 0.5 * series.LiquidInBottle[0].Kilograms;
            if (now <= half) return series.Time[i - 1].Seconds + (series.Time[i] - series.Time[i - 1]).Seconds * (before - half) / (before - now);
        }
        return double.PositiveInfinity;
    }

    static (Layout Layout, DischargeResult Result) Solve(string json)
    {
        var layout = Documents.Read(json);
        return (layout, LayoutDischarge.Solve(layout, TestContext.Current.CancellationToken));
    }
}

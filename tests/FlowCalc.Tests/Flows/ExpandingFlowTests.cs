using FlowCalc.Flows;

namespace FlowCalc.Tests.Flows;

/// <summary>The steady flow of gases and liquefied gases from documents.</summary>
public class ExpandingFlowTests
{
    [Theory]
    [MemberData(nameof(GasDocuments.Agents), MemberType = typeof(GasDocuments))]
    public void What_leaves_the_bottle_leaves_the_nozzles_and_losses_add_up_to_each_drop(string agent)
    {
        var flow = Documents.Solve(GasDocuments.Tree(agent));

        var supply = flow.Supply!;
        Assert.Equal(supply.MassFlow.KilogramsPerSecond, flow.Nozzles.Sum(nozzle => nozzle.MassFlow.KilogramsPerSecond), tolerance: 1e-9 * supply.MassFlow.KilogramsPerSecond);
        Assert.Equal(1, flow.Nozzles.Sum(nozzle => nozzle.Share), tolerance: 1e-9);
        Assert.All(flow.Nozzles, nozzle =>
            Assert.Equal(supply.ReservoirPressure.Pascals - nozzle.Pressure.Pascals, nozzle.Losses.Total.Pascals, tolerance: 1e-9 * supply.ReservoirPressure.Pascals));
        Assert.All(flow.Runs, run => Assert.True(run.PressureIn > run.PressureOut));
        // The nozzle behind the thinnest tube gets the least.
        Assert.True(flow.Nozzles[2].Share < flow.Nozzles[1].Share);
    }

    [Theory]
    [MemberData(nameof(GasDocuments.Boiling), MemberType = typeof(GasDocuments))]
    public void The_more_boils_in_the_nozzles_the_less_they_pass_and_the_band_holds_all_three(string agent)
    {
        FlowResult Of(string model) => Documents.Solve(GasDocuments.Tree(agent, $$""" "model": { "nozzles": "{{model}}" }, """));
        var (equilibrium, delayed, frozen) = (Of("equilibrium"), Of("delayed"), Of("frozen"));
        var (least, usual, most) = (equilibrium.Supply!.MassFlow.KilogramsPerSecond, delayed.Supply!.MassFlow.KilogramsPerSecond, frozen.Supply!.MassFlow.KilogramsPerSecond);

        Assert.True(least < usual && usual < most, $"{least} < {usual} < {most}");
        Assert.Equal(least, delayed.Band!.Low.KilogramsPerSecond, tolerance: 1e-7 * usual);
        Assert.Equal(most, delayed.Band.High.KilogramsPerSecond, tolerance: 1e-7 * usual);
        Assert.InRange(usual, frozen.Band!.Low.KilogramsPerSecond, frozen.Band.High.KilogramsPerSecond);
        Assert.All(delayed.Nozzles.Zip(delayed.Band.Shares), pair => Assert.InRange(pair.First.Share, pair.Second.Low, pair.Second.High));
        Assert.Equal(3, delayed.Band.From.Length);
        Assert.Null(Documents.Solve(GasDocuments.Tree("argon")).Band);
    }

    // Critical fluxes of saturated liquid at 20 °C in equilibrium, by a separate evaluation of the same equations.
    [Theory]
    [InlineData("carbon-dioxide", 680, 31_699)]
    [InlineData("HFC-23", 700, 27_416)]
    public void A_nozzle_at_the_bottle_passes_the_critical_flux_of_saturated_liquid(string agent, double fill, double flux)
    {
        var flow = Documents.Solve(GasDocuments.Nozzle(
            $"\"{agent}\"", $$"""{ "bottle": { "volume": "10 L", "fill": "{{fill}} kg/m3" } }""", """ "model": { "nozzles": "equilibrium" }, """));

        var area = 0.8 * Math.PI / 4 * 0.004 * 0.004;
        Assert.Equal(flux, flow.Supply!.MassFlow.KilogramsPerSecond / area, tolerance: 2e-3 * flux);
    }

    // Where nothing boils, a liquefied gas is a liquid like any other.
    [Fact]
    public void Without_boiling_the_flow_is_that_of_a_liquid_of_its_density_and_viscosity()
    {
        const string held = """ "ambientPressure": "9 bara", """;
        var agent = Documents.Read(GasDocuments.Nozzle("\"HFC-227ea\"", """{ "pressure": "10 bara" }""", held)).Agent;
        var density = agent.RestDensity(293.15, 9.5e5);
        var viscosity = ((FlowCalc.Agents.ExpandingAgent)agent).Fluid.LiquidViscosity(293.15);
        var own = FormattableString.Invariant($$"""{ "density": "{{density}} kg/m3", "viscosity": "{{viscosity * 1e3}} mPa·s" }""");
        string Tree(string named) => GasDocuments.Tree("HFC-227ea").Replace("\"HFC-227ea\"", named + "," + held.TrimEnd(',', ' '), StringComparison.Ordinal)
            .Replace("""{ "bottle": {  "volume": "8 L", "fill": "7 kg", "chargePressure": "25 bar"  } }""", """{ "pressure": "10 bara" }""", StringComparison.Ordinal);

        var (expanding, liquid) = (Documents.Solve(Tree("\"HFC-227ea\"")), Documents.Solve(Tree(own)));

        // Over 1 bar the liquid gives by 2e-4 of its density.
        Assert.Equal(liquid.Supply!.MassFlow.KilogramsPerSecond, expanding.Supply!.MassFlow.KilogramsPerSecond, tolerance: 1e-3 * liquid.Supply.MassFlow.KilogramsPerSecond);
        Assert.All(liquid.Nozzles.Zip(expanding.Nozzles), pair =>
        {
            Assert.Equal(pair.First.Share, pair.Second.Share, tolerance: 2e-4);
            Assert.Equal(pair.First.Losses.Tube.Pascals, pair.Second.Losses.Tube.Pascals, tolerance: 300);
            Assert.Equal(pair.First.Losses.Rise.Pascals, pair.Second.Losses.Rise.Pascals, tolerance: 20);
        });
    }

    // An orifice choked by nitrogen near to an ideal gas: G = p·√(γ/RT)·(2/(γ+1))^((γ+1)/(2(γ−1))).
    [Fact]
    public void Thin_nitrogen_chokes_as_an_ideal_gas()
    {
        var flow = Documents.Solve(GasDocuments.Nozzle("\"nitrogen\"", """{ "pressure": "5 bara" }"""));

        const double gamma = 1.4, r = 296.8;
        var flux = 5e5 * Math.Sqrt(gamma / (r * 293.15)) * Math.Pow(2 / (gamma + 1), (gamma + 1) / (2 * (gamma - 1)));
        Assert.Equal(flux, flow.Supply!.MassFlow.KilogramsPerSecond / (0.8 * Math.PI / 4 * 0.004 * 0.004), tolerance: 4e-3 * flux);
    }

    // A K-factor stands for the orifice of the same Cd·A: Q = K·√Δp of a liquid of 1000 kg/m³.
    [Fact]
    public void A_nozzle_by_K_factor_passes_what_its_orifice_does()
    {
        var area = 0.8 * Math.PI / 4 * 0.004 * 0.004;
        var k = area * Math.Sqrt(2 / 1000.0) * 60_000 * Math.Sqrt(1e5);
        var byFactor = Documents.Solve(GasDocuments.Nozzle("\"argon\"", """{ "pressure": "60 bar" }""", "", FormattableString.Invariant($$""" "kFactor": "{{k}} L/min/bar^0.5" """)));
        var byOrifice = Documents.Solve(GasDocuments.Nozzle("\"argon\"", """{ "pressure": "60 bar" }"""));

        Assert.Equal(byOrifice.Supply!.MassFlow.KilogramsPerSecond, byFactor.Supply!.MassFlow.KilogramsPerSecond, tolerance: 1e-9);
    }

    [Fact]
    public void A_regulator_holds_its_pressure_and_the_rest_is_lost_in_the_outlet()
    {
        var flow = Documents.Solve(GasDocuments.Tree("IG-541", bottle: """, "outlet": { "valveKv": "2 m3/h", "regulator": { "setPressure": "40 bar" } }"""));

        Assert.Equal(40e5 + 101_325, flow.Supply!.Pressure.Pascals, tolerance: 1);
        Assert.True(flow.Supply.ReservoirPressure.Bars > 150);
        Assert.Equal(flow.Supply.ReservoirPressure.Pascals - flow.Supply.Pressure.Pascals, flow.Nozzles[0].Losses.Outlet.Pascals, tolerance: 1);
    }

    [Fact]
    public void A_thin_tube_before_a_wide_nozzle_chokes_and_says_so()
    {
        var json = GasDocuments.Nozzle("\"nitrogen\"", """{ "pressure": "100 bar" }""", nozzle: """ "orifice": { "diameter": "20 mm", "dischargeCoefficient": 0.8 } """)
            .Replace("\"bore\": \"50 mm\", \"length\": \"0.01 m\"", "\"bore\": \"6 mm\", \"length\": \"2 m\"", StringComparison.Ordinal);

        Assert.True(Assert.Single(Documents.Solve(json).Runs).IsChoked);
        Assert.False(Assert.Single(Documents.Solve(GasDocuments.Nozzle("\"nitrogen\"", """{ "pressure": "100 bar" }""")).Runs).IsChoked);
    }

    [Theory]
    [InlineData("nitrogen", """{ "bottle": { "volume": "8 L", "chargePressure": "200 bar", "outlet": { "burstPressure": "220 bar" } } }""", "burst")]
    public void A_bottle_that_lets_nothing_out_has_a_reason_and_no_flow(string agent, string supply, string words)
    {
        var result = SteadyFlow.Solve(Documents.Read(GasDocuments.Nozzle($"\"{agent}\"", supply)), TestContext.Current.CancellationToken);

        Assert.False(result.Report.Converged);
        Assert.Contains(words, result.Report.Failure!, StringComparison.Ordinal);
        Assert.Empty(result.Nozzles);
    }
}

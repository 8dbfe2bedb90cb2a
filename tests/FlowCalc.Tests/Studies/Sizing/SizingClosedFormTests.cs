using System.Text;
using FlowCalc.Layouts;
using FlowCalc.Studies.Sizing;
using UnitsNet;

namespace FlowCalc.Tests.Studies.Sizing;

/// <summary>Sizes that can be told without a search.</summary>
public class SizingClosedFormTests
{
    [Fact]
    public void Equal_legs_of_a_bullhead_take_the_same_orifice_and_then_share_alike()
    {
        var layout = Read("""
            { "format": 1, "agent": "water", "supply": { "pressure": "8 bar" },
              "points": [ { "id": "S", "kind": "supply" }, { "id": "T", "kind": "tee", "fedThrough": "branch", "body": "smooth" },
                { "id": "a", "kind": "nozzle", "share": 0.5, "orifice": { "diameter": "1.2 mm", "dischargeCoefficient": 0.8 } }, { "id": "b", "kind": "nozzle", "share": 0.5, "orifice": { "diameter": "1.7 mm", "dischargeCoefficient": 0.8 } } ],
              "runs": [ { "from": "S", "to": "T", "bore": "6 mm", "length": "1 m" }, { "from": "T", "to": "a", "bore": "4 mm", "length": "1.3 m" }, { "from": "T", "to": "b", "bore": "4 mm", "length": "1.3 m" } ] }
            """);
        var problem = new SizingProblem
        {
            Layout = layout,
            Nozzles = [new() { Diameter = Length.FromMillimeters(1.4) }, new() { Diameter = Length.FromMillimeters(1.5) }],
            Groups = [new([], [2]), new([], [3])],
            Wish = new(),
            Objective = SizingObjective.BestBalance,
        };

        var result = LayoutSizing.Solve(problem, TestContext.Current.CancellationToken);

        Assert.True(result.IsProven);
        Assert.Equal(((Nozzle)result.Best!.Layout.Points[2]).KFactor, ((Nozzle)result.Best.Layout.Points[3]).KFactor);
        Assert.Equal(0, result.Best.Value!.Value, tolerance: 1e-10);
    }

    // By hand: the flow at the least pressure, Colebrook's friction at that flow, and the drop of Darcy's law in each bore of the list.
    [Theory]
    [InlineData(5)]
    [InlineData(6.5)]
    [InlineData(7.5)]
    public void Single_run_takes_the_least_bore_whose_Darcy_loss_leaves_the_pressure(double leastBar)
    {
        const double supplyBar = 8, length = 12, density = 998.2072, viscosity = 1.0016e-3, roughness = 1.5e-6, factor = 10; // L/min/bar^0.5
        double[] bores = [4, 5, 6, 7, 8, 10, 12, 14, 17, 20];
        var layout = Read(FormattableString.Invariant($$"""
            { "format": 1, "agent": { "density": "{{density}} kg/m3", "viscosity": "{{viscosity * 1e3}} mPa·s" }, "supply": { "pressure": "{{supplyBar}} bar" },
              "points": [ { "id": "S", "kind": "supply" }, { "id": "n", "kind": "nozzle", "kFactor": "{{factor}} L/min/bar^0.5" } ],
              "runs": [ { "from": "S", "to": "n", "bore": "3 mm", "length": "{{length}} m" } ] }
            """));
        var flow = factor / 60_000 * Math.Sqrt(leastBar) * Math.Sqrt(1000 / density);
        var least = bores.First(bore => Drop(bore / 1e3) <= (supplyBar - leastBar) * 1e5);
        var problem = new SizingProblem
        {
            Layout = layout,
            Tubes = [.. bores.Select(bore => new TubeOption(new() { Name = $"{bore}", Bore = Length.FromMillimeters(bore), Roughness = Length.FromMeters(roughness) }, bore, null))],
            Groups = [new([0], [])],
            Wish = new() { LeastPressure = layout.AmbientPressure + Pressure.FromBars(leastBar) },
            Objective = SizingObjective.LeastCost,
        };

        var result = LayoutSizing.Solve(problem, TestContext.Current.CancellationToken);

        Assert.True(result.IsProven);
        Assert.Equal(least, result.Best!.Layout.Runs[0].Tube.Bore.Millimeters, tolerance: 1e-9);
        Assert.Equal(least * length, result.Best.Value!.Value, tolerance: 1e-9);

        double Drop(double bore)
        {
            var velocity = flow / (Math.PI / 4 * bore * bore);
            var (reynolds, x) = (density * velocity * bore / viscosity, 8.0);
            Assert.True(reynolds > 4_000);
            for (var pass = 0; pass < 60; pass++) x = -2 * Math.Log10(roughness / bore / 3.7 + 2.51 * x / reynolds);
            return length / bore * density * velocity * velocity / 2 / (x * x);
        }
    }

    internal static Layout Read(string text)
    {
        var reading = LayoutReader.Read(Encoding.UTF8.GetBytes(text));
        return reading.Layout ?? throw new InvalidOperationException(string.Join("; ", reading.Faults.Select(fault => $"{fault.Pointer} {fault.Message}")));
    }
}

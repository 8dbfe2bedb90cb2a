using System.Text.Json.Nodes;
using FlowCalc.Calibration;
using FlowCalc.Discharge;
using FlowCalc.Examples;
using FlowCalc.Layouts;
using FlowCalc.Tests.Flows;
using UnitsNet;

namespace FlowCalc.Tests.Calibration;

/// <summary>The whole discharge from the bottle, timed.</summary>
public class DischargeTimeTests
{
    static Layout Timed(double seconds)
    {
        var json = JsonNode.Parse(ExampleCatalogue.Find("raid-pickup")!.Value.Span)!;
        json["measured"] = new JsonObject { ["agent"] = "water-premix", ["dischargeTime"] = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{seconds:R} s") };
        return Documents.Read(json.ToJsonString());
    }

    static double LastGas(Layout layout)
    {
        var upright = new DischargeCases([Temperature.FromDegreesCelsius(20)], [new Attitude("upright", new(0, 0, -1))]);
        return LayoutDischarge.Solve(layout with { Cases = upright }, TestContext.Current.CancellationToken).Cases[0].Nozzles.Max(nozzle => nozzle.LiquidEnd!.Value.Seconds);
    }

    [Fact]
    public void A_time_as_drawn_leaves_the_layout_as_drawn()
    {
        var result = Planted.Solve(Timed(LastGas(Planted.Demo)));

        // The discharge of the answer takes finer steps of time than that of a fit.
        Assert.Equal(0, result.Drawn!.ChiSquare, tolerance: 0.01);
        Assert.Equal(CauseKind.AsDrawn, result.Best!.Kind);
    }

    [Fact]
    public void A_bore_is_found_from_the_time_and_other_causes_are_as_likely()
    {
        var result = Planted.Solve(Timed(LastGas(BuiltLayout.WithBores(Planted.Demo, 0.9))));

        Assert.Equal(0.9, Planted.Of(result, CauseKind.Bore).Unknowns[0].Value, tolerance: 1e-3);
        Assert.Equal(0, Planted.Of(result, CauseKind.Bore).DegreesOfFreedom);
        Assert.Null(Planted.Of(result, CauseKind.Bore).Chance);
        Assert.Contains(CauseKind.SupplyPressure, result.Alike.Append(result.Best!).Select(cause => cause.Kind));
        Assert.Contains(result.LeftOut, left => left.Kind == CauseKind.Run);
        Assert.Contains(result.LeftOut, left => left.Kind == CauseKind.Nozzles);
    }
}

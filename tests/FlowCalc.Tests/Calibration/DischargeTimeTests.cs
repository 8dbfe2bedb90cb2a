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
    static Layout Timed(double seconds, string? agent = null)
    {
        var json = JsonNode.Parse(ExampleCatalogue.Find("raid-pickup")!.Value.Span)!;
        json["measured"] = new JsonObject { ["agent"] = "water-premix", ["dischargeTime"] = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{seconds:R} s") };
        if (agent is not null) json["agent"] = JsonNode.Parse(agent);
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
    public void A_bottle_is_tested_with_the_volume_of_its_fill_and_says_so()
    {
        var heavy = Timed(10, """{ "density": "1300 kg/m3", "viscosity": "1 mPa·s" }""");
        var rig = new BottleRig(heavy, heavy.Measured!, TestContext.Current.CancellationToken);
        var (own, test) = (((BottleSupply)heavy.Supply).Bottle, ((BottleSupply)rig.Tested.Supply).Bottle);

        Assert.Equal(own.Fill.Kilograms / 1300, test.Fill.Kilograms / heavy.Measured!.Agent.Density(293.15), tolerance: 1e-12);
        Assert.Contains(heavy.Measured!.Assumptions, one => one.Pointer == "/measured/dischargeTime");
    }

    [Fact]
    public void Causes_that_a_single_time_does_not_tell_apart_stand_in_their_own_order()
    {
        var alike = Planted.Solve(Timed(LastGas(BuiltLayout.WithBores(Planted.Demo, 0.9)))).Causes.Where(cause => cause.ChiSquare < 1e-9).Select(cause => cause.Kind).ToArray();

        Assert.True(alike.Length > 1);
        Assert.Equal(alike.Order(), alike);
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

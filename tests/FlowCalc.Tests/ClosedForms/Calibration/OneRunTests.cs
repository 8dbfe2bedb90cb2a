using System.Collections.Immutable;
using FlowCalc.Calibration;
using FlowCalc.Layouts;
using FlowCalc.Losses;
using FlowCalc.Networks;
using FlowCalc.Tests.Calibration;
using FlowCalc.Tests.Flows;

namespace FlowCalc.Tests.ClosedForms.Calibration;

/// <summary>A run without length and with a loss coefficient, and a nozzle: Δp = m²/ρ·(ζ/(2A²) + 1/(2(C_d·A)²)), so that flow, derivative and calibration are known.</summary>
public class OneRunTests
{
    const double Drop = 8e5, Zeta = 10;

    static readonly string Json = Documents.Water("""{ "id": "N", "kind": "nozzle", "kFactor": "3 L/min/bar^0.5" }""", """{ "id": "feed", "from": "S", "to": "N", "bore": "4 mm", "length": "0 m", "lossCoefficient": 10 }""");

    static (Layout Layout, double Density, double PerK, double OfNozzle) Case()
    {
        var layout = Planted.Tested(Documents.Read(Json), drawn => drawn);
        var measured = layout.Measured!;
        var area = KFactor.ToEffectiveArea(((Nozzle)layout.Points[1]).KFactor);
        return (layout, measured.Agent.Density(measured.Temperature.Kelvins), Resistance.PerCoefficient(0.004), 1 / (2 * area * area));
    }

    static double Flow(double k)
    {
        var (_, density, perK, ofNozzle) = Case();
        return Math.Sqrt(Drop * density / ((Zeta + k) * perK + ofNozzle));
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(7)]
    [InlineData(200)]
    public void The_loss_follows_from_the_flow(double k)
    {
        var (layout, density, perK, ofNozzle) = Case();
        var flow = Flow(k);
        Assert.Equal(k, (Drop * density / (flow * flow) - ofNozzle) / perK - Zeta, tolerance: 1e-9 * k);

        var result = Planted.Solve(layout with { Measured = layout.Measured! with { Readings = [new(MeasuredKind.Flow, 1, flow, 0.02 * flow)] } });

        Assert.Equal(1, Planted.Of(result, CauseKind.Run, 0).Unknowns[0].Value / k, tolerance: 1e-6);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(50)]
    public void Derivatives_and_standard_error_are_those_of_the_formula(double k)
    {
        var (layout, density, perK, _) = Case();
        var flow = Flow(k);
        var sigma = 0.01 * flow;
        var measured = layout.Measured! with { Readings = [new(MeasuredKind.Flow, 1, flow, 2 * sigma)], Suspects = [CauseKind.Run] };
        var rig = new HeldRig(layout, measured, TestContext.Current.CancellationToken);
        var trial = Assert.Single(TrialList.Of(measured, rig, []));

        // d m / d K = −m³·a/(2·Δp·ρ), and by the variable s times dK/ds, with K = K₀(1/s² − 1).
        var whole = rig.WholeLoss(0, rig.DrawnFlows()[0]);
        var s = 1 / Math.Sqrt(1 + k / whole);
        var byK = -flow * flow * flow * perK / (2 * Drop * density);
        var byS = byK * -2 * whole / (s * s * s);

        Assert.Equal(1, new BoundedFit(trial, measured).Jacobian([s])[0, 0] * sigma / byS, tolerance: 1e-6);
        var found = Planted.Of(Planted.Solve(layout with { Measured = measured }), CauseKind.Run, 0).Unknowns[0];
        Assert.Equal(1, found.StandardError!.Value * Math.Abs(byK) / sigma, tolerance: 1e-4);
    }

    [Fact]
    public void Static_pressure_is_the_total_less_the_velocity_head()
    {
        var (layout, density, perK, ofNozzle) = Case();
        var measured = layout.Measured! with { Readings = ImmutableArray.Create(new MeasuredReading(MeasuredKind.Pressure, 1, 5e5, 1e4)) };

        var read = new HeldRig(layout, measured, TestContext.Current.CancellationToken);

        var flow = Flow(0);
        Assert.Equal(layout.AmbientPressure.Pascals + flow * flow / density * (ofNozzle - perK), read.Read(read.Tested, 1)[0], tolerance: 0.1);
    }
}

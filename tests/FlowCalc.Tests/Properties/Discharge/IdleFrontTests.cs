using System.Text;
using FlowCalc.Discharge;
using FlowCalc.Layouts;

namespace FlowCalc.Tests.Properties.Discharge;

/// <summary>Fronts that hardly move: layouts found by random documents, made as small as they would go.</summary>
public class IdleFrontTests
{
    // Liquid at the tee passes the wide branch by, and the error of the steps leaves its front a little before the branch's start when the gas comes.
    const string StarvedBranch =
        """
        { "format": 1, "agent": "water",
          "supply": {"bottle": {"volume": "1 L", "fill": "0.5 kg", "chargePressure": "7 bar"}},
          "cases": {"temperatures": ["60 °C"], "attitudes": [{"name": "upright", "gravity": [0, 0, -1]}]},
          "points": [
            {"id": "p0", "kind": "supply"}, {"id": "p1", "kind": "tee", "fedThrough": "run"}, {"id": "p2", "kind": "tee", "fedThrough": "branch"},
            {"id": "p3", "kind": "nozzle", "orifice": {"diameter": "5 mm", "dischargeCoefficient": 0.8}}, {"id": "p4", "kind": "tee", "fedThrough": "run"}, {"id": "p5", "kind": "nozzle", "orifice": {"diameter": "4 mm", "dischargeCoefficient": 0.8}},
            {"id": "p6", "kind": "nozzle", "orifice": {"diameter": "5 mm", "dischargeCoefficient": 0.8}}, {"id": "p7", "kind": "nozzle", "kFactor": "2 L/min/bar^0.5"} ],
          "runs": [
            {"from": "p0", "to": "p1", "bore": "11 mm", "length": "0.4 m"}, {"from": "p1", "to": "p2", "bore": "16.5 mm", "length": "3 m", "leaves": "run", "bends": [{"angle": "55 °", "radius": "60 mm", "count": 2}]}, {"from": "p1", "to": "p3", "bore": "20 mm", "length": "1 m", "leaves": "branch"},
            {"from": "p2", "to": "p4", "bore": "6 mm", "length": "0.5 m"}, {"from": "p2", "to": "p5", "bore": "10 mm", "length": "4 m"}, {"from": "p4", "to": "p6", "bore": "7 mm", "length": "5 m", "leaves": "run"},
            {"from": "p4", "to": "p7", "bore": "20 mm", "length": "0.4 m", "leaves": "branch"} ] }
        """;

    // The tubes hold more than the bottle, and what the last of the pressure moves is more than is left in it.
    const string LargeLine =
        """
        { "format": 1, "agent": {"density": "958 kg/m3", "viscosity": "20 mPa·s"},
          "supply": {"bottle": {"volume": "5.2726 L", "fill": "4.34 kg", "chargePressure": "6.24 bar"}},
          "cases": {"temperatures": ["20 °C"], "attitudes": [{"name": "upright", "gravity": [0, 0, -1]}]},
          "points": [
            {"id": "p0", "kind": "supply"}, {"id": "p1", "kind": "junction"}, {"id": "p2", "kind": "tee", "fedThrough": "branch"},
            {"id": "p3", "kind": "tee", "fedThrough": "branch"}, {"id": "p4", "kind": "junction"}, {"id": "p5", "kind": "tee", "fedThrough": "run"},
            {"id": "p6", "kind": "tee", "fedThrough": "run"}, {"id": "p7", "kind": "tee", "fedThrough": "branch"}, {"id": "p9", "kind": "tee", "fedThrough": "branch"},
            {"id": "p10", "kind": "nozzle", "kFactor": "0.2 L/min/bar^0.5"}, {"id": "p11", "kind": "nozzle", "orifice": {"diameter": "4 mm", "dischargeCoefficient": 0.8}}, {"id": "p12", "kind": "nozzle", "orifice": {"diameter": "0.9 mm", "dischargeCoefficient": 0.8}},
            {"id": "p13", "kind": "cap"}, {"id": "p14", "kind": "cap"}, {"id": "p15", "kind": "cap"},
            {"id": "p16", "kind": "nozzle", "kFactor": "5 L/min/bar^0.5"}, {"id": "p17", "kind": "nozzle", "kFactor": "3 L/min/bar^0.5"} ],
          "runs": [
            {"from": "p0", "to": "p1", "bore": "9 mm", "length": "4 m"}, {"from": "p1", "to": "p2", "bore": "20 mm", "length": "5 m"}, {"from": "p1", "to": "p3", "bore": "8 mm", "length": "2 m"},
            {"from": "p2", "to": "p4", "bore": "20 mm", "length": "4 m"}, {"from": "p2", "to": "p5", "bore": "20 mm", "length": "0.2 m"}, {"from": "p3", "to": "p6", "bore": "8 mm", "length": "3 m"},
            {"from": "p3", "to": "p7", "bore": "10 mm", "length": "2 m"}, {"from": "p4", "to": "p9", "bore": "10 mm", "length": "1 m"}, {"from": "p5", "to": "p10", "bore": "8 mm", "length": "5 m", "leaves": "run"},
            {"from": "p5", "to": "p11", "bore": "2 mm", "length": "1 m", "leaves": "branch"}, {"from": "p6", "to": "p12", "bore": "10 mm", "length": "3 m", "leaves": "run"}, {"from": "p6", "to": "p13", "bore": "20 mm", "length": "2 m", "leaves": "branch"},
            {"from": "p7", "to": "p14", "bore": "8 mm", "length": "1 m"}, {"from": "p7", "to": "p15", "bore": "3 mm", "length": "2 m"}, {"from": "p9", "to": "p16", "bore": "10 mm", "length": "3 m"},
            {"from": "p9", "to": "p17", "bore": "20 mm", "length": "4 m"} ] }
        """;

    [Theory]
    [InlineData(StarvedBranch, 0.5)]
    [InlineData(LargeLine, 4.34)]
    public void Fronts_that_hardly_move_end_in_books_that_balance_without_a_mass_below_nothing(string document, double fill)
    {
        var reading = LayoutReader.Read(Encoding.UTF8.GetBytes(document), null, TestContext.Current.CancellationToken);
        Assert.Empty(reading.Faults);

        var one = Assert.Single(LayoutDischarge.Solve(reading.Layout!, TestContext.Current.CancellationToken).Cases);

        Assert.Null(one.Failure);
        double[] masses = [one.LeftInBottle.Kilograms, one.LeftInTubes.Kilograms, .. one.Nozzles.Select(nozzle => nozzle.Mass.Kilograms)];
        Assert.All(masses, mass => Assert.True(mass >= -1e-12 * fill, $"{mass} kg"));
        Assert.Equal(fill, masses.Sum(), tolerance: 1e-9 * fill);
    }
}

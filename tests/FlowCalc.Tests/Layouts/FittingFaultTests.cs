using FlowCalc.Layouts;

namespace FlowCalc.Tests.Layouts;

/// <summary>Faults of fittings among the document's stock and in their runs.</summary>
public class FittingFaultTests
{
    [Theory]
    [InlineData("/runs/1/fittings/0", """{ "kind": "union", "bore": "0.001 mm", "length": "1 mm" }""", "/runs/1/fittings/0/bore", "read \"0.001 mm\": the tube's roughness of 0.0015 mm is over 5 % of this bore")]
    [InlineData("/runs/1/fittings/0/fitting", """{ "kind": "union", "bore": "0.001 mm", "length": "1 mm" }""", "/runs/1/fittings/0/fitting/bore", "over 5 % of this bore")]
    [InlineData("/fittings/panel/bore", "\"0.001 mm\"", "/runs/1/fittings/0/fitting", "'panel' has a bore of 0.001 mm: the tube's roughness of 0.0015 mm is over 5 % of this bore")]
    [InlineData("/runs/1/fittings/0", """{ "kind": "elbow", "lossCoefficient": 1.2, "bore": "0.02 mm", "length": "1 mm" }""", "/runs/1/fittings/0/bore", "over 5 % of this bore")]
    [InlineData("/fittings/panel", """{ "kind": "elbow", "kv": "2 m3/h", "bore": "5 mm", "length": "10 mm" }""", "/fittings/panel/kv", "kv stands for the whole fitting")]
    [InlineData("/fittings/panel/kind", "\"Elbow\"", "/fittings/panel/kind", "did you mean 'elbow'")]
    [InlineData("/fittings/panel/kind", "\"Union\"", "/fittings/panel/kind", "did you mean 'union'")]
    [InlineData("/fittings/panel/kind", "\" union\"", "/fittings/panel/kind", "did you mean 'union'")]
    [InlineData("/fittings/panel/kind", "\"bulkhead union\"", "/fittings/panel/kind", "did you mean 'bulkhead-union'")]
    [InlineData("/fittings/panel/kind", "\"bulkhead\u2010union\"", "/fittings/panel/kind", "did you mean 'bulkhead-union'")]
    [InlineData("/fittings/panel/kind", "\"Bulkhead_Union\"", "/fittings/panel/kind", "did you mean 'bulkhead-union'")]
    [InlineData("/fittings/panel/kind", "\"BulkheadUnion\"", "/fittings/panel/kind", "did you mean 'bulkhead-union'")]
    [InlineData("/fittings/panel", """{ "kind": "ELBOW", "angle": "45 °" }""", "/fittings/panel/kind", "did you mean 'elbow'")]
    [InlineData("/runs/1/fittings/0", """{ "kind": "Elbow" }""", "/runs/1/fittings/0/kind", "did you mean 'elbow'")]
    [InlineData("/fittings/panel/length", "\"0.51 m\"", "/runs/1/fittings", "the fittings are 0.51 m long together, over the run's length of 0.5 m")]
    [InlineData("/runs/1/fittings/0/count", "13", "/runs/1/fittings", "the fittings are 0.52 m long together, over the run's length of 0.5 m")]
    public void A_wrong_fitting_is_one_fault(string edit, string? value, string pointer, string words) =>
        Specimen.HasOneFault(Specimen.With((edit, value)), pointer, words);

    [Fact]
    public void The_roughness_of_a_tube_is_held_against_a_tighter_bore_alone()
    {
        string With(string roughness, string bore) =>
            Specimen.With(("/tubes/trunk/roughness", $"\"{roughness}\""), ("/fittings/panel/bore", $"\"{bore}\""));

        Specimen.HasOneFault(With("0.1 mm", "0.099 mm"), "/runs/1/fittings/0/fitting", "over 5 % of this bore");
        Specimen.HasOneFault(With("0.4 mm", "7.9 mm"), "/runs/1/fittings/0/fitting", "over 5 % of this bore");
        Assert.Empty(Specimen.Read(With("0.1 mm", "2.1 mm")).Faults);
        Assert.Empty(Specimen.Read(With("0.4 mm", "8 mm")).Faults);
        Assert.Empty(Specimen.Read(With("0.4 mm", "9 mm")).Faults);
    }

    [Theory]
    [InlineData("hose union")]
    [InlineData("elbows")]
    [InlineData("valve")]
    [InlineData("union")]
    [InlineData("bulkhead-union")]
    [InlineData("elbow")]
    public void Any_other_kind_is_free_text(string kind) => Assert.Empty(Specimen.Read(Specimen.With(("/fittings/panel/kind", $"\"{kind}\""))).Faults);

    [Fact]
    public void An_elbow_may_have_a_bore_beside_its_loss_coefficient()
    {
        var layout = Specimen.Read(Specimen.With(("/fittings/panel", """{ "kind": "elbow", "lossCoefficient": 1.2, "bore": "5 mm", "length": "10 mm" }"""))).Layout!;

        var elbow = layout.Runs[1].Fittings[0].Fitting;
        Assert.Equal(1.2, elbow.LossCoefficient);
        Assert.Equal(5, elbow.Bore!.Value.Millimeters, tolerance: 1e-12);
    }

    [Theory]
    [InlineData("""{ "kind": "strainer" }""", "no loss")]
    [InlineData("""{ "kind": "strainer", "lossCoefficient": 0 }""", "")]
    [InlineData("""{ "kind": "strainer", "kv": "2 m3/h" }""", "")]
    [InlineData("""{ "kind": "strainer", "bore": "5 mm", "length": "10 mm" }""", "")]
    [InlineData("""{ "kind": "union" }""", "union: bore as the tube's")]
    [InlineData("""{ "kind": "union", "lossCoefficient": 0.2 }""", "")]
    [InlineData("""{ "kind": "bulkhead-union" }""", "bulkhead-union: bore as the tube's")]
    [InlineData("""{ "kind": "elbow" }""", "elbow: bore as the tube's|elbow: K = 1.20 at 90°, sharp turn")]
    [InlineData("""{ "kind": "elbow", "lossCoefficient": 1 }""", "")]
    [InlineData("""{ "kind": "elbow", "kv": "2 m3/h" }""", "")]
    [InlineData("\"elbow-90-mitred\"", "")]
    [InlineData("""{ "kind": "elbow", "bore": "5 mm", "length": "10 mm" }""", "elbow: K = 1.20 at 90°, sharp turn")]
    public void What_a_fitting_leaves_open_is_listed_as_assumed(string fitting, string values)
    {
        var layout = Specimen.Read(Specimen.With(("/runs/1/fittings/0", fitting))).Layout!;

        Assert.Equal(values, string.Join('|', layout.Assumptions.Where(assumption => assumption.Pointer == "/runs/1/fittings/0").Select(assumption => assumption.Value)));
    }

    [Fact]
    public void Fittings_may_fill_their_run()
    {
        var reading = Specimen.Read(Specimen.With(("/runs/1/fittings", """["panel", { "fitting": "panel", "count": 10 }, { "kind": "strainer", "kv": "2 m3/h", "length": "60 mm" }]""")));

        Assert.Empty(reading.Faults);
        Assert.Equal([1, 10, 1], reading.Layout!.Runs[1].Fittings.Select((PlacedFitting placed) => placed.Count));
    }
}

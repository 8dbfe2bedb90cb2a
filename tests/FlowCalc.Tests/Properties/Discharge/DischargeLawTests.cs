using CsCheck;
using FlowCalc.Discharge;
using FlowCalc.Tests.Flows;

namespace FlowCalc.Tests.Properties.Discharge;

/// <summary>Laws of a whole discharge, from document to masses and times.</summary>
public class DischargeLawTests
{
    const string Bottle =
        """
        { "volume": "4 L", "fill": "2.6 kg", "chargePressure": "14 bar", "openingTime": "0.02 s", "shape": { "diameter": "130 mm", "length": "301.4 mm" },
          "outlet": { "dipTube": { "bore": "10 mm", "length": "295 mm" }, "valveKv": "2 m3/h" } }
        """;

    static readonly Gen<int> Seed = Gen.Int[0, int.MaxValue - 1];

    [Fact]
    public void What_was_filled_in_is_delivered_or_left() =>
        Seed.Sample(seed =>
        {
            var layout = Documents.Read(new RandomLayout(seed).Document(bottle: Bottle));

            foreach (var one in LayoutDischarge.Solve(layout, CancellationToken.None).Cases)
            {
                if (one.Failure is { } failure)
                {
                    Assert.True(failure.Kind == DischargeFailureKind.BelowFreezing, failure.Message);
                    continue;
                }
                var delivered = one.Nozzles.Sum(nozzle => nozzle.Mass.Kilograms);
                Assert.Equal(2.6, delivered + one.LeftInBottle.Kilograms + one.LeftInTubes.Kilograms, tolerance: 2.6e-9);
                Assert.InRange(one.MassDefect, 0, 1e-9);
                Assert.Equal(1, one.Nozzles.Sum(nozzle => nozzle.Share), tolerance: 1e-12);
                Assert.All(one.Nozzles, nozzle => Assert.True(nozzle.Arrival is null || nozzle.Time95 > nozzle.Arrival));
                Assert.True(one.Time95 is null || one.Time95 < one.End);
                for (var i = 1; i < one.Series!.Time.Length; i++)
                    Assert.True(one.Series.Time[i] >= one.Series.Time[i - 1]);
            }
        }, iter: 60);

    [Fact]
    public void Other_names_and_another_order_change_nothing() =>
        Seed.Sample(seed =>
        {
            var random = new RandomLayout(seed);
            var (plain, renamed) = (Documents.Read(random.Document(bottle: Bottle)), Documents.Read(random.Document(id => $"x {id}", shuffle: seed, bottle: Bottle)));

            var (first, second) = (LayoutDischarge.Solve(plain, CancellationToken.None).Cases[0], LayoutDischarge.Solve(renamed, CancellationToken.None).Cases[0]);

            Assert.Equal(first.Time95?.Seconds ?? 0, second.Time95?.Seconds ?? 0, tolerance: 1e-6);
            var byName = second.Nozzles.ToDictionary(nozzle => renamed.Points[nozzle.Point].Id);
            foreach (var nozzle in first.Nozzles)
                Assert.Equal(nozzle.Mass.Kilograms, byName[$"x {plain.Points[nozzle.Point].Id}"].Mass.Kilograms, tolerance: 1e-6);
        }, iter: 40);

    [Fact]
    public void Equal_branches_start_and_end_together() =>
        Gen.Select(Gen.Double[3, 8], Gen.Double[0.2, 3]).Sample((bore, length) =>
        {
            static string Text(FormattableString text) => FormattableString.Invariant(text);
            string Run(string from, string to) => Text($$"""{ "from": "{{from}}", "to": "{{to}}", "bore": "{{bore}} mm", "length": "{{length}} m" }""");
            var layout = Documents.Read($$"""
                { "format": 1, "agent": "water", "supply": { "bottle": {{Bottle}} },
                  "points": [ { "id": "S", "kind": "supply" }, { "id": "T", "kind": "tee", "fedThrough": "branch", "body": "smooth" },
                    { "id": "A", "kind": "nozzle", "kFactor": "1.2 L/min/bar^0.5" }, { "id": "B", "kind": "nozzle", "kFactor": "1.2 L/min/bar^0.5" } ],
                  "runs": [ {{Run("S", "T")}}, {{Run("T", "A")}}, {{Run("T", "B")}} ] }
                """);

            var nozzles = LayoutDischarge.Solve(layout, CancellationToken.None).Cases[0].Nozzles;

            Assert.Equal(nozzles[0].Arrival, nozzles[1].Arrival);
            Assert.Equal(nozzles[0].LiquidEnd, nozzles[1].LiquidEnd);
            Assert.Equal(0.5, nozzles[0].Share, tolerance: 1e-9);
        }, iter: 40);

    [Fact]
    public void Half_the_orifice_takes_twice_the_time_where_nothing_else_loses()
    {
        double Time95(double diameter) => LayoutDischarge.Solve(Documents.Read(FormattableString.Invariant($$"""
            { "format": 1, "agent": { "density": "1000 kg/m3", "viscosity": "1 mPa·s" },
              "supply": { "bottle": { "volume": "6 L", "fill": "4 kg", "chargePressure": "14 bar", "cushionHeat": "isothermal" } },
              "points": [ { "id": "S", "kind": "supply" }, { "id": "N", "kind": "nozzle", "orifice": { "diameter": "{{diameter}} mm", "dischargeCoefficient": 0.8 } } ],
              "runs": [ { "from": "S", "to": "N", "bore": "20 mm", "length": "0.02 m" } ] }
            """)), CancellationToken.None).Cases[0].Time95!.Value.Seconds;

        var whole = Time95(3);

        Assert.Equal(2, Time95(3 / Math.Sqrt(2)) / whole, tolerance: 2e-3);
    }
}

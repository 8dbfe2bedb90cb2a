using CsCheck;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Tests.Flows;

namespace FlowCalc.Tests.Properties.Flows;

/// <summary>Laws of a whole answer, from document to flows.</summary>
public class FlowLawTests
{
    static readonly Gen<int> Seed = Gen.Int[0, int.MaxValue - 1];

    static Dictionary<string, NozzleFlow> ById(Layout layout, FlowResult result) =>
        result.Nozzles.ToDictionary(n => layout.Points[n.Point].Id);

    [Fact]
    public void Losses_by_kind_add_up_to_the_drop_from_supply_to_nozzle() =>
        Seed.Sample(seed =>
        {
            var result = Documents.Solve(new RandomLayout(seed).Document());

            foreach (var nozzle in result.Nozzles)
            {
                var drop = (result.Supply!.ReservoirPressure - nozzle.Pressure).Pascals;
                Assert.Equal(drop, nozzle.Losses.Total.Pascals, tolerance: 1e-9 * Math.Abs(drop) + 1e-8);
            }
            Assert.InRange(result.Report.PressureResidual, 0, 1e-4);
        }, iter: 400);

    [Fact]
    public void What_enters_a_point_leaves_it_and_the_shares_make_a_whole() =>
        Seed.Sample(seed =>
        {
            var layout = Documents.Read(new RandomLayout(seed).Document());

            var result = SteadyFlow.Solve(layout, CancellationToken.None);

            var balance = new double[layout.Points.Length];
            for (var i = 0; i < layout.Runs.Length; i++)
            {
                balance[layout.Runs[i].To] += result.Runs[i].MassFlow.KilogramsPerSecond;
                balance[layout.Runs[i].From] -= result.Runs[i].MassFlow.KilogramsPerSecond;
            }
            var total = result.Supply!.MassFlow.KilogramsPerSecond;
            foreach (var nozzle in result.Nozzles) balance[nozzle.Point] -= nozzle.MassFlow.KilogramsPerSecond;
            for (var i = 0; i < balance.Length; i++)
                Assert.Equal(0, layout.Points[i] is SupplyPoint ? balance[i] + total : balance[i], tolerance: 1e-12 * total);
            Assert.Equal(1, result.Nozzles.Sum(n => n.Share), tolerance: 1e-12);
            Assert.Equal(1, result.Nozzles.Sum(n => n.WantedShare), tolerance: 1e-12);
        }, iter: 400);

    [Fact]
    public void Other_names_and_another_order_change_no_flow() =>
        Seed.Sample(seed =>
        {
            var random = new RandomLayout(seed);
            var (plain, renamed) = (Documents.Read(random.Document()), Documents.Read(random.Document(id => $"x {id} y", shuffle: seed)));

            var first = ById(plain, SteadyFlow.Solve(plain, CancellationToken.None));
            var second = ById(renamed, SteadyFlow.Solve(renamed, CancellationToken.None));

            foreach (var (id, nozzle) in first)
                Assert.Equal(nozzle.MassFlow.KilogramsPerSecond, second[$"x {id} y"].MassFlow.KilogramsPerSecond, tolerance: 1e-12);
        }, iter: 300);

    [Fact]
    public void A_run_cut_in_two_equal_halves_changes_no_flow() =>
        Gen.Select(Gen.Double[0.2, 40], Gen.Double[1, 12], Gen.Double[-1, 1]).Sample((length, bore, steepness) =>
        {
            var rise = 0.2 * steepness * length;
            static string Tube(FormattableString text) => FormattableString.Invariant(text);
            var whole = Documents.Solve(Documents.Water(
                """{ "id": "N", "kind": "nozzle", "kFactor": "4 L/min/bar^0.5" }""",
                Tube($$"""{ "from": "S", "to": "N", "bore": "{{bore}} mm", "length": "{{length}} m", "rise": "{{rise}} m" }""")));
            var halves = Documents.Solve(Documents.Water(
                """{ "id": "M", "kind": "reducer" }, { "id": "N", "kind": "nozzle", "kFactor": "4 L/min/bar^0.5" }""",
                Tube($$"""{ "from": "S", "to": "M", "bore": "{{bore}} mm", "length": "{{length / 2}} m", "rise": "{{rise / 2}} m" }""") + ", "
                    + Tube($$"""{ "from": "M", "to": "N", "bore": "{{bore}} mm", "length": "{{length / 2}} m", "rise": "{{rise / 2}} m" }""")));

            var flow = whole.Supply!.MassFlow.KilogramsPerSecond;
            Assert.Equal(flow, halves.Supply!.MassFlow.KilogramsPerSecond, tolerance: 1e-11 * flow);
        }, iter: 300);

    [Fact]
    public void Equal_branches_get_equal_shares() =>
        Gen.Select(Gen.Int[1, 6], Gen.Double[2, 8], Gen.Double[0.1, 3]).Sample((levels, bore, length) =>
        {
            var (points, runs) = Balanced(levels, bore, length);

            var result = Documents.Solve(Documents.Water(points, runs));

            foreach (var nozzle in result.Nozzles)
                Assert.Equal(1.0 / result.Nozzles.Length, nozzle.Share, tolerance: 1e-12);
        }, iter: 100);

    [Fact]
    public void A_closed_nozzle_lowers_no_other_nozzle_behind_junctions() =>
        Gen.Select(Gen.Int[1, 5], Gen.Double[2, 8], Gen.Double[0.1, 3]).Sample((levels, bore, length) =>
        {
            var (points, runs) = Balanced(levels, bore, length);
            points = points.Replace("\"kind\": \"tee\", \"fedThrough\": \"branch\", \"body\": \"smooth\"", "\"kind\": \"junction\"", StringComparison.Ordinal);
            var last = $"\"id\": \"P{(2 << levels) - 2}\", \"kind\": \"nozzle\", \"kFactor\": \"2 L/min/bar^0.5\"";
            var capped = points.Replace(last, last[..last.IndexOf(", \"kind\"", StringComparison.Ordinal)] + ", \"kind\": \"cap\"", StringComparison.Ordinal);

            var (all, fewer) = (Documents.Solve(Documents.Water(points, runs)), Documents.Solve(Documents.Water(capped, runs)));

            Assert.Equal(all.Nozzles.Length - 1, fewer.Nozzles.Length);
            for (var i = 0; i < fewer.Nozzles.Length; i++)
                Assert.True(fewer.Nozzles[i].Pressure.Pascals >= all.Nozzles[i].Pressure.Pascals - 1e-6);
        }, iter: 100);

    // A full binary tree of bullheads: P0 is the first tee, point i feeds 2i + 1 and 2i + 2.
    static (string Points, string Runs) Balanced(int levels, double bore, double length)
    {
        var count = (2 << levels) - 1;
        var first = (1 << levels) - 1;
        var points = Enumerable.Range(0, count).Select(i => i < first
            ? $$"""{ "id": "P{{i}}", "kind": "tee", "fedThrough": "branch", "body": "smooth" }"""
            : $$"""{ "id": "P{{i}}", "kind": "nozzle", "kFactor": "2 L/min/bar^0.5" }""");
        var runs = Enumerable.Range(0, count).Select(i => FormattableString.Invariant(
            $$"""{ "from": "{{(i == 0 ? "S" : $"P{(i - 1) / 2}")}}", "to": "P{{i}}", "bore": "{{bore}} mm", "length": "{{length}} m" }"""));
        return (string.Join(", ", points), string.Join(", ", runs));
    }
}

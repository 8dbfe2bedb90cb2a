using CsCheck;
using FlowCalc.Discharge;
using FlowCalc.Tests.Flows;

namespace FlowCalc.Tests.Properties.Discharge;

/// <summary>Any bottle, any line, any way up and any acceleration come to an end, with their books closed.</summary>
public class AnyBottleTests
{
    static readonly Gen<string> Outlet = Gen.OneOf(
        "",
        """, "outlet": { "dipTube": { "bore": "9 mm", "length": "200 mm" }, "valveKv": "1.5 m3/h" }""",
        """, "outlet": { "dipTube": { "bore": "9 mm", "length": "200 mm", "follows": true } }""",
        """, "outlet": { "dipTube": { "bore": "9 mm", "length": "200 mm", "inlet": ["20 mm", "0 mm", "10 mm"] }, "regulator": { "setPressure": "6 bar" } }""",
        """, "outlet": { "restrictor": { "diameter": "3 mm", "dischargeCoefficient": 0.7 }, "valveKv": "1 m3/h" }""",
        """, "axis": [0.3, 0.2, -1], "outlet": { "valveKv": "2 m3/h", "regulator": { "setPressure": "4 bar", "kv": "2 m3/h" } }""");

    static readonly Gen<string> Bottle =
        Gen.Select(Gen.Double[1.2, 8], Gen.Double[0.05, 0.9], Gen.Double[1, 40], Gen.Int[1, 3], Outlet, Gen.OneOf("wall", "isothermal", "adiabatic"), Gen.OneOf(0.0, 0.1, 2.0))
            .Select((volume, fill, charge, count, outlet, heat, opening) => FormattableString.Invariant(
                $$"""{ "volume": "{{volume}} L", "fill": "{{volume * fill}} L", "chargePressure": "{{charge}} bar", "count": {{count}}, "cushionHeat": "{{heat}}", "openingTime": "{{opening}} s"{{outlet}} }"""));

    static readonly Gen<string> Cases =
        Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.OneOf(0.0, 1.0, 1.0, 5.0, 60.0), Gen.Double[1, 90])
            .Select((x, y, z, size, celsius) => FormattableString.Invariant(
                $$"""{ "temperatures": ["{{celsius}} °C"], "attitudes": [ { "name": "any", "gravity": [{{x * size}}, {{y * size}}, {{z * size}}] } ] }"""));

    [Fact]
    public void Every_case_ends_with_its_books_closed() =>
        Gen.Select(Gen.Int[0, int.MaxValue - 1], Bottle, Cases).Sample((seed, bottle, cases) =>
        {
            var document = new RandomLayout(seed).Document(bottle: bottle).Replace("\"format\": 1,", $"\"format\": 1, \"cases\": {cases},", StringComparison.Ordinal);
            var layout = Documents.Read(document);

            var one = Assert.Single(LayoutDischarge.Solve(layout, CancellationToken.None).Cases);

            if (one.Failure is { } failure)
            {
                Assert.True(failure.Kind is DischargeFailureKind.LiquidFull or DischargeFailureKind.NoPressure, failure.Message);
                return;
            }
            var fill = ((FlowCalc.Layouts.BottleSupply)layout.Supply).Bottle is var filled ? filled.Fill.Kilograms * filled.Count : 0;
            Assert.Equal(fill, one.Nozzles.Sum(nozzle => nozzle.Mass.Kilograms) + one.LeftInBottle.Kilograms + one.LeftInTubes.Kilograms, tolerance: 1e-9 * fill);
            Assert.InRange(one.MassDefect, 0, 1e-9);
            Assert.InRange(one.Steps, 0, 3000);
            Assert.True(double.IsFinite(one.End.Seconds));
            Assert.All(one.Nozzles, nozzle => Assert.True(nozzle.Mass.Kilograms >= 0));
            Assert.All(one.Series!.Nozzles, nozzle => Assert.All(nozzle.MassFlow, flow => Assert.True(flow.KilogramsPerSecond >= 0)));
        }, iter: 2000);
}

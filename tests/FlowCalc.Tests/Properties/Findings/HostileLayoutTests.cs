using System.Globalization;
using CsCheck;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Quantities;
using FlowCalc.Tests.Findings;

namespace FlowCalc.Tests.Properties.Findings;

/// <summary>Layouts that no one would build are judged in numbers all the same.</summary>
public class HostileLayoutTests
{
    sealed record Leg(double Bore, double Length, double Rise, double Coefficient, double? Share);

    static readonly Gen<Leg> Legs =
        from bore in OneOf(5e-5, 1e-3, 0.006, 0.5)
        from length in OneOf(0.001, 1.0, 900.0)
        from rise in OneOf(0.0, 0.0, 1.0, -1.0)
        from coefficient in OneOf(1e-6, 0.5, 1e5)
        from share in OneOf<double?>(null, null, 5e-324, 1e-12, 0.3)
        select new Leg(bore, length, rise, coefficient, share);

    static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(place => values[place]);

    [Fact]
    public void No_message_holds_a_number_that_is_none()
    {
        var (judged, dry) = (0, 0);

        (from pressure in OneOf("1e-6 bar", "0.5 bar", "200 bar")
         from legs in Legs.Array[3]
         from feed in Legs
         select (pressure, legs, feed)).Sample(given =>
        {
            var layout = Judged.Read(Document(given.pressure, given.feed, given.legs));
            var flow = SteadyFlow.Solve(layout, TestContext.Current.CancellationToken);
            if (!flow.Report.Converged) return;
            Interlocked.Increment(ref judged);
            if (flow.Supply!.MassFlow.KilogramsPerSecond == 0) Interlocked.Increment(ref dry);
            foreach (var finding in FlowFindings.Judge(layout, flow, UnitSystem.Metric, TestContext.Current.CancellationToken).Findings)
            {
                foreach (var text in (string?[])[finding.Message, finding.Cure?.Message])
                {
                    if (text is null) continue;
                    Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
                    Assert.DoesNotContain("∞", text, StringComparison.Ordinal);
                    Assert.DoesNotContain("Infinity", text, StringComparison.Ordinal);
                }
                foreach (var measure in (Measure?[])[finding.Measured, finding.Limit, finding.Cure?.Before, finding.Cure?.After])
                    Assert.True(measure is not { } known || double.IsFinite(known.Si), finding.Message);
            }
        }, iter: 400);

        Assert.True(judged > 200, $"Only {judged} flows were judged.");
        Assert.True(dry > 10, $"Only {dry} of them were dry.");
    }

    static string Document(string pressure, Leg feed, Leg[] legs)
    {
        var nozzles = legs.Select((leg, n) => $$"""{ "id": "n{{n}}", "kind": "nozzle", "kFactor": "{{Text(leg.Coefficient)}} L/min/bar^0.5"{{(leg.Share is { } share ? $", \"share\": {Text(share)}" : "")}}, "pressureRange": ["0 bar", "300 bar"] }""");
        return $$"""
            { "format": 1, "agent": "water", "ambientPressure": "1 bara", "temperature": "20 °C", "supply": { "pressure": "{{pressure}}" },
              "tubes": { "feed": { "bore": "6 mm", "roughness": "1.5 µm" } },
              "points": [{ "id": "S", "kind": "supply" }, { "id": "T", "kind": "tee", "fedThrough": "branch" }, { "id": "U", "kind": "tee", "fedThrough": "branch" }, {{string.Join(',', nozzles)}}],
              "runs": [{{Run("S", "T", feed)}}, {{Run("T", "U", feed with { Rise = 0 })}}, {{Run("T", "n0", legs[0])}}, {{Run("U", "n1", legs[1])}}, {{Run("U", "n2", legs[2])}}] }
            """;
    }

    // A rise is as much of the length as its sign says.
    static string Run(string from, string to, Leg leg) =>
        $$"""{ "from": "{{from}}", "to": "{{to}}", "bore": "{{Text(leg.Bore)}} m", "roughness": "0 m", "length": "{{Text(leg.Length)}} m", "rise": "{{Text(leg.Length * leg.Rise)}} m" }""";

    static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}

using System.Globalization;
using CsCheck;
using FlowCalc.Findings;
using FlowCalc.Tests.Findings;

namespace FlowCalc.Tests.Properties.Findings;

/// <summary>Laws of judgements over random trees of tees in which one run is thin.</summary>
public class CureLawTests
{
    static readonly Gen<(int[] Splits, double[] Lengths, int Thin)> Trees =
        from splits in Gen.Int[0, 1_000].Array[1, 6]
        from lengths in Gen.Double[0.1, 2].Array[2 * splits.Length + 1]
        from thin in Gen.Int[0, 2 * splits.Length]
        select (splits, lengths, thin);

    [Fact]
    public void A_cure_that_is_told_lowers_the_deviation_when_the_document_is_changed_so()
    {
        var cured = 0;

        Trees.Sample(tree =>
        {
            var json = Document(tree.Splits, tree.Lengths, tree.Thin);
            var before = Judged.Of(json);
            foreach (var finding in before.Judgement.Findings)
            {
                if (finding.Cure is not { } cure || finding.Code is not (FindingCodes.StarvedNozzle or FindingCodes.OverfedNozzle or FindingCodes.UnevenBranch)) continue;
                var after = Judged.Of(CureProof.Changed(json, cure));
                Assert.True(cure.Clears || Worst(after) < Worst(before));
                Assert.True(Badness(cure.After.Si) < Badness(cure.Before.Si));
                for (var nozzle = 0; nozzle < after.Flow.Nozzles.Length; nozzle++)
                {
                    var (was, now) = (before.Flow.Nozzles[nozzle].Deviation!.Value, after.Flow.Nozzles[nozzle].Deviation!.Value);
                    Assert.False(now > 0.2 + 1e-9 && was <= 0.2, $"a cure feeds a nozzle {now:P1} too much");
                    Assert.False(now < -0.2 - 1e-9 && was >= -0.2, $"a cure starves a nozzle by {-now:P1}");
                }
                if (finding.Code == FindingCodes.UnevenBranch) continue;
                Assert.Equal(before.Nozzle(finding.Where[0]).Deviation!.Value, cure.Before.Si, tolerance: 1e-12);
                Assert.Equal(after.Nozzle(finding.Where[0]).Deviation!.Value, cure.After.Si, tolerance: 1e-9);
                Interlocked.Increment(ref cured);
            }
        }, iter: 150);

        Assert.True(cured > 100, $"Only {cured} cures were seen.");
    }

    [Fact]
    public void Every_nozzle_beyond_a_limit_is_told_and_no_other()
    {
        Trees.Sample(tree =>
        {
            var judged = Judged.Of(Document(tree.Splits, tree.Lengths, tree.Thin));
            var off = judged.Flow.Nozzles.Where(nozzle => Math.Abs(nozzle.Deviation ?? 0) > 0.10 + 1e-9).Select(nozzle => judged.Layout.Points[nozzle.Point].Id);
            var told = judged.All(FindingCodes.StarvedNozzle).Concat(judged.All(FindingCodes.OverfedNozzle)).SelectMany(finding => finding.Where);
            Assert.Equal(off.Order(StringComparer.Ordinal), told.Order(StringComparer.Ordinal));
            Assert.Equal(judged.Judgement.Findings.Select(finding => finding.Severity).Append(Severity.Pass).Max(), judged.Judgement.Verdict);
        }, iter: 150);
    }

    [Fact]
    public void A_starved_leg_is_named_whenever_a_nozzle_starves()
    {
        Trees.Sample(tree =>
        {
            var judged = Judged.Of(Document(tree.Splits, tree.Lengths, tree.Thin));
            var starved = judged.All(FindingCodes.StarvedNozzle).SelectMany(finding => finding.Where).ToHashSet();
            var legs = judged.All(FindingCodes.UnevenBranch).ToArray();
            Assert.Equal(starved.Count > 0, legs.Length > 0);
            Assert.InRange(legs.Length, 0, 3);
            var held = legs.SelectMany(leg => leg.Where.Where(starved.Contains)).ToArray();
            Assert.Equal(held.Length, held.Distinct().Count());
            if (legs.Length < 3) Assert.Equal(starved.Count, held.Length);
        }, iter: 150);
    }

    // Half of what is wanted is as bad as twice as much of it.
    static double Badness(double deviation) => deviation >= 0 ? deviation : 1 / (1 + deviation) - 1;

    static double Worst(Judged judged) => judged.Flow.Nozzles.Max(nozzle => Badness(nozzle.Deviation!.Value));

    /// <summary>A tree that starts with one nozzle; each split puts a tee in the place of a nozzle and two nozzles behind it.</summary>
    static string Document(int[] splits, double[] lengths, int thin)
    {
        List<(string From, string To)> ends = [("source", "n0")];
        List<string> tees = [];
        var nozzles = new List<string> { "n0" };
        foreach (var split in splits)
        {
            var place = split % nozzles.Count;
            var tee = $"T{tees.Count}";
            var end = ends.FindIndex(run => run.To == nozzles[place]);
            ends[end] = (ends[end].From, tee);
            var other = $"n{nozzles.Count}";
            ends.Add((tee, nozzles[place]));
            ends.Add((tee, other));
            nozzles.Add(other);
            tees.Add(tee);
        }
        var points = tees.Select(tee => $$"""{ "id": "{{tee}}", "kind": "tee", "fedThrough": "branch", "body": "smooth" }""")
            .Concat(nozzles.Select(nozzle => $$"""{ "id": "{{nozzle}}", "kind": "nozzle", "orifice": { "diameter": "1.4 mm", "dischargeCoefficient": 0.82 } }"""));
        var runs = ends.Select((run, index) =>
        {
            var id = $"R{index.ToString(CultureInfo.InvariantCulture)}";
            var tube = index == thin ? "thin" : "feed";
            var length = lengths[index].ToString("R", CultureInfo.InvariantCulture);
            return $$"""{ "id": "{{id}}", "from": "{{run.From}}", "to": "{{run.To}}", "tube": "{{tube}}", "length": "{{length}} m" }""";
        });
        return $$"""
            { "format": 1, "agent": "water", "ambientPressure": "1 bara", "temperature": "20 °C", "supply": { "pressure": "8 bar" },
              "tubes": { "feed": { "bore": "6 mm", "roughness": "1.5 µm" }, "thin": { "bore": "2.5 mm", "roughness": "1.5 µm" }, "trunk": { "bore": "8 mm", "roughness": "1.5 µm" } },
              "points": [{ "id": "source", "kind": "supply" }, {{string.Join(',', points)}}], "runs": [{{string.Join(',', runs)}}] }
            """;
    }
}

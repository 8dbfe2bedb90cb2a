using FlowCalc.Findings;
using FlowCalc.Tests.Layouts;

namespace FlowCalc.Tests.Coverage;

/// <summary>Cures of a coverage: made in the document, read and worked out, they clear what they were found for.</summary>
public class CoverageCureTests
{
    public static TheoryData<string, string, string> Documents => new()
    {
        { CoverageCodes.TargetNotCovered, "points/left/aim", Specimen.With(CoverageDocument.Table, "/points/2/aim", "[0, 1, 0]") },
        { CoverageCodes.AimedAtPerson, "points/left/aim", Specimen.With(CoverageDocument.Table, "/points/2/aim", "[0.7, -0.3, 0.4]") },
        { CoverageCodes.TooLittleAgent, "supply/bottle/fill", Specimen.With(CoverageDocument.Space, "/supply/bottle/fill", "\"2 kg\"") },
        { CoverageCodes.OverLoael, "supply/bottle/fill", Specimen.With(Specimen.With(CoverageDocument.Space, "/zones/engine/occupied", "true"), "/zones/engine/design", "0.03") },
    };

    [Theory]
    [MemberData(nameof(Documents))]
    public void A_change_of_the_document_clears_the_finding(string code, string path, string json)
    {
        var finding = CoverageDocument.Judge(json).Findings.First(one => one.Code == code);

        Assert.True(finding.Cure is { Clears: true }, finding.Message);
        Assert.Equal(path, Assert.Single(finding.Cure!.Changes).Path);
        var changed = CoverageDocument.Judge(Made(json, finding.Cure));
        Assert.DoesNotContain(changed.Findings, one => one.Code == code && one.Where.SequenceEqual(finding.Where));
        Assert.Equal(finding.Cure.Outcome.Verdict, changed.Verdict);
        Assert.Equal(finding.Cure.Outcome.Fails, changed.Findings.Count(one => one.Severity == Severity.Fail));
    }

    [Fact]
    public void Where_no_change_clears_it_the_message_says_how_many_were_tried()
    {
        var finding = CoverageDocument.Judge(CoverageDocument.Table, ("/coverage/targets/drill/at", """["0.5 m", "9 m", "0 m"]""")).Single(CoverageCodes.TargetNotCovered);

        Assert.Null(finding.Cure);
        Assert.Contains("no cure found, 2 changes tried", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_only_the_builder_can_mend_has_no_cure() =>
        Assert.Null(CoverageDocument.Judge(CoverageDocument.Space, ("/zones/engine/airflow", null)).Single(CoverageCodes.FloodingNotClaimable).Cure);

    static string Made(string json, Cure cure)
    {
        var set = cure.Changes.ToDictionary(change => change.Path, change => change.To!.Json);
        return set.Aggregate(json, (text, change) =>
        {
            var names = change.Key.Split('/');
            var pointer = names[0] == "points" ? $"/points/{IndexOf(json, names[1])}/{names[2]}" : "/" + change.Key;
            return Specimen.With(text, pointer, change.Value);
        });
    }

    static int IndexOf(string json, string id)
    {
        var points = Specimen.Read(json).Layout!.Points;
        return points.IndexOf(points.Single(point => point.Id == id));
    }
}

using System.Text;
using System.Text.Json;
using FlowCalc.Findings;
using FlowCalc.Layouts.Editing;
using FlowCalc.Tests.Mounts;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Tests.Findings.Mounts;

/// <summary>Findings of mounts: found, not found, and cleared by the change that is told.</summary>
public class MountFindingsTests
{
    public static TheoryData<string, Severity, string?, string> Rows
    {
        get
        {
            var rows = new TheoryData<string, Severity, string?, string>();
            foreach (var (code, severity, path, json) in MountDocuments.All) rows.Add(code, severity, path, json);
            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_finding_is_found_where_it_should_be(string code, Severity severity, string? path, string json)
    {
        var judgement = MountedLayout.Judge(json, cures: true);

        var finding = judgement.Findings.First(one => one.Code == code);
        Assert.Equal(severity, finding.Severity);
        Assert.EndsWith(".", finding.Message, StringComparison.Ordinal);
        Assert.NotEmpty(finding.Source);
        Assert.True(path is null ? finding.Cure is null : finding.Cure is { Clears: true }, finding.Message);
        if (path is not null) Assert.Equal(path, finding.Cure!.Changes[0].Path);
    }

    [Fact]
    public void Every_code_has_a_document_in_which_it_is_found() =>
        Assert.Equal(MountCodes.All.Select(definition => definition.Code), MountDocuments.All.Select(row => row.Code).Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void Nothing_but_what_is_left_open_is_found_in_a_sound_mount()
    {
        var judgement = MountedLayout.Judge(MountDocuments.Sound);

        Assert.Equal([FindingCodes.AssumptionMade], judgement.Findings.Select(finding => finding.Code));
        Assert.Equal(Severity.Note, judgement.Verdict);
        Assert.Contains(judgement.Limits, limit => limit.Code == MountCodes.BoltOverloaded);
        Assert.DoesNotContain(judgement.Limits, limit => limit.Code == FindingCodes.StarvedNozzle);
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_cure_made_in_the_document_gives_what_it_tells(string code, Severity severity, string? path, string json)
    {
        foreach (var units in Enum.GetValues<UnitSystem>())
        {
            var before = MountedLayout.Judge(json, cures: true, units);
            foreach (var finding in before.Findings.Where(finding => finding.Cure is not null))
            {
                var cure = finding.Cure!;
                var edited = DocumentEdit.Apply(
                    Encoding.UTF8.GetBytes(json), [.. cure.Changes.Select(change => new DocumentChange(change.Path, change.To is null ? default : JsonElement.Parse(change.To.Json)))], TestContext.Current.CancellationToken);
                Assert.Empty(edited.Faults);

                var after = MountedLayout.Judge(Encoding.UTF8.GetString(edited.Utf8.Span), units: units);

                Assert.Equal((after.Verdict, after.Findings.Count(one => one.Severity == Severity.Fail), after.Findings.Count(one => one.Severity == Severity.Warn)), (cure.Outcome.Verdict, cure.Outcome.Fails, cure.Outcome.Warns));
                Assert.DoesNotContain(after.Findings, one => one.Code == finding.Code && one.Severity >= finding.Severity && one.Where.SequenceEqual(finding.Where));
                Assert.StartsWith("With ", cure.Message, StringComparison.Ordinal);
                if (finding.Measured is { } measured) Assert.Equal(measured, cure.Before);
            }
        }
        Assert.True(path is null || severity > Severity.Note, code);
    }

    [Fact]
    public void Limit_that_the_document_states_replaces_the_default()
    {
        var strict = MountedLayout.With(("/limits", """{ "bolt-overloaded": { "warn": 0.05, "fail": 0.1 } }"""));

        var finding = MountedLayout.Judge(strict).Findings.First(one => one.Code == MountCodes.BoltOverloaded);
        Assert.Equal((Severity.Fail, 0.1, "stated in the document"), (finding.Severity, finding.Limit!.Value.Si, finding.Source));
        Assert.DoesNotContain(MountedLayout.Judge(MountedLayout.Json).Findings, one => one.Code == MountCodes.BoltOverloaded);
    }

    [Fact]
    public void Two_bolts_cannot_be_cured_by_a_second_row_that_stands_in_their_line()
    {
        var single = MountedLayout.With(("/mount/bolts", """{ "size": "M6", "class": "8.8", "at": [["0 mm", "0 mm"]] }"""));

        var finding = MountedLayout.Judge(single, cures: true).Findings.First(one => one.Code == MountCodes.BoltsInLine);

        Assert.Null(finding.Cure);
        Assert.Contains("bolt 1", finding.Where);
    }

    [Theory]
    [InlineData("motorsport", 25, "any direction")]
    [InlineData("marine-engine-space", 6, "6 g up")]
    [InlineData("machine", 10, "any direction")]
    [InlineData("electrical-cabinet", 2, "any direction")]
    [InlineData(null, 10, "any direction")]
    public void Load_cases_are_those_of_the_application_and_are_listed_as_assumed(string? application, double acceleration, string words)
    {
        var json = MountedLayout.With(("/mount/loads", null), ("/application", application is null ? null : $"\"{application}\""));

        var result = FlowCalc.Mounts.LayoutMount.Solve(MountedLayout.Read(json), TestContext.Current.CancellationToken);

        Assert.Equal(acceleration, result.Cases.Max(one => one.Acceleration));
        Assert.Contains(result.Cases, one => one.Name.Contains(words, StringComparison.Ordinal));
        Assert.Contains(result.Assumptions, one => one.Pointer == "/mount/loads");
        Assert.All(result.Cases, one => Assert.NotEmpty(one.Source));
    }
}

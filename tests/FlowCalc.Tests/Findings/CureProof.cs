using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Editing;
using FlowCalc.Tests.Flows;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Tests.Findings;

/// <summary>Proves cures by making their changes in the document, reading and solving that, and looking at what is found then.</summary>
static class CureProof
{
    /// <summary>The findings of a document's steady flow, after each of its cures has been proved; null where there is no flow.</summary>
    public static ImmutableArray<Finding>? OfFlow(string json, UnitSystem units = UnitSystem.Metric)
    {
        if (Flow(Documents.Read(json)) is not { } before) return null;
        var findings = FlowFindings.Judge(before.Layout, before.Flow, units, TestContext.Current.CancellationToken).Findings;
        foreach (var finding in findings)
        {
            if (finding.Cure is not { } cure) continue;
            var after = Flow(Changed(json, cure))!.Value;
            Prove(findings, finding, FlowFindings.JudgeWithoutCures(after.Layout, after.Flow, units, TestContext.Current.CancellationToken).Findings);
            if (cure.Outcome.WorstNozzle is not { } worst || cure.Outcome.WorstDeviation is not { } deviation) continue;
            Assert.Equal(after.Flow.Nozzles.Single(nozzle => after.Layout.Points[nozzle.Point].Id == worst).Deviation!.Value, deviation, tolerance: 1e-9);
        }
        return findings;
    }

    /// <summary>The findings of a document's discharge, after each of its cures has been proved.</summary>
    public static ImmutableArray<Finding> OfDischarge(string json, UnitSystem units = UnitSystem.Metric)
    {
        var layout = Documents.Read(json);
        var findings = DischargeFindings.JudgeWithCures(layout, Discharge(layout), units, TaskScheduler.Default, TestContext.Current.CancellationToken).Findings;
        foreach (var finding in findings)
        {
            if (finding.Cure is not { } cure) continue;
            var changed = Changed(json, cure);
            var discharge = Discharge(changed);
            Prove(findings, finding, DischargeFindings.Judge(changed, discharge, units, TestContext.Current.CancellationToken).Findings);
            var times = discharge.Cases.Where(one => one.Failure is null).Select(one => discharge.Requirement is null ? one.Time95 : one.RequiredTime).ToArray();
            Assert.Equal(times.Length == 0, cure.Outcome.SlowestCase is null);
            if (times.Length == 0) continue;
            Assert.Equal(times.Any(time => time is null), cure.Outcome.SlowestTime is null);
            if (cure.Outcome.SlowestTime is { } slowest) Assert.Equal(times.Max(time => time!.Value.Seconds), slowest.Seconds, tolerance: 1e-9);
        }
        return findings;
    }

    /// <summary>A document with the changes of a cure, which has to be a layout.</summary>
    public static Layout Changed(string json, Cure cure)
    {
        var edited = DocumentEdit.Apply(Encoding.UTF8.GetBytes(json),
            [.. cure.Changes.Select(change => new DocumentChange(change.Path, change.To is null ? default : JsonElement.Parse(change.To.Json)))], TestContext.Current.CancellationToken);
        Assert.Empty(edited.Faults);
        return Documents.Read(Encoding.UTF8.GetString(edited.Utf8.Span));
    }

    static void Prove(ImmutableArray<Finding> before, Finding finding, ImmutableArray<Finding> after)
    {
        var cure = finding.Cure!;
        Assert.Equal(after.Select(one => one.Severity).Append(Severity.Pass).Max(), cure.Outcome.Verdict);
        Assert.Equal(after.Count(one => one.Severity == Severity.Fail), cure.Outcome.Fails);
        Assert.Equal(after.Count(one => one.Severity == Severity.Warn), cure.Outcome.Warns);
        Assert.Equal(finding.Measured, cure.Before);
        Assert.True(double.IsFinite(cure.After.Si), cure.Message);

        // What names many places may name others then.
        if (finding.Where.Length <= 4 || finding.Code == FindingCodes.UnevenBranch)
        {
            var same = after.Where(one => one.Code == finding.Code && Place(one) == Place(finding)).Select(one => one.Severity).Append(Severity.Pass).Max();
            if (cure.Clears) Assert.True(same < finding.Severity, cure.Message);
        }
        var failing = before.Where(one => one.Severity == Severity.Fail).SelectMany(Places).ToHashSet();
        foreach (var one in after.Where(one => one.Severity == Severity.Fail).SelectMany(Places)) Assert.Contains(one, failing);
    }

    // A leg is its run; a bottle, a nozzle or a run its id.
    static string Place(Finding finding) => finding.Code == FindingCodes.UnevenBranch ? finding.Where[1] : finding.Where[0];

    static IEnumerable<(string Code, string Place)> Places(Finding finding) =>
        finding.Code is FindingCodes.StarvedNozzle or FindingCodes.OverfedNozzle or FindingCodes.StarvedZone or FindingCodes.OverWorkingPressure or FindingCodes.VelocityHigh
            ? finding.Where.Select(place => (finding.Code, place))
            : finding.Code is FindingCodes.PressureSpread or FindingCodes.LateArrival ? [(finding.Code, "")] : [(finding.Code, Place(finding))];

    static (Layout Layout, FlowResult Flow)? Flow(Layout layout)
    {
        var flow = SteadyFlow.Solve(layout, TestContext.Current.CancellationToken);
        return flow.Report.Converged ? (layout, flow) : null;
    }

    static DischargeResult Discharge(Layout layout) => LayoutDischarge.Solve(layout, TestContext.Current.CancellationToken);
}

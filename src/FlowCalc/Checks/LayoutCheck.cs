using System.Collections.Immutable;
using FlowCalc.Calibration;
using FlowCalc.Circuits;
using FlowCalc.Coverage;
using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Mounts;
using FlowCalc.Routes;
using FlowCalc.Upkeep;

namespace FlowCalc.Checks;

/// <summary>Everything that a layout has data for, worked out and judged.</summary>
/// <param name="Layout">The layout.</param>
/// <param name="Ask">What was asked beside it.</param>
public sealed record LayoutCheck(Layout Layout, CheckAsk Ask)
{
    /// <summary>One instant of the flow; null where it did not converge.</summary>
    public Answered<FlowResult, FlowJudgement>? Flow { get; private init; }

    /// <summary>The discharge; null where the supply is no bottle.</summary>
    public Answered<DischargeResult, DischargeJudgement>? Discharge { get; private init; }

    /// <summary>The cut list.</summary>
    public required Answered<CutList, CutListJudgement> CutList { get; init; }

    /// <summary>The mount; null where the document has none.</summary>
    public Answered<MountResult, MountJudgement>? Mount { get; private init; }

    /// <summary>The firing circuit; null where the document has none.</summary>
    public Answered<CircuitResult, CircuitJudgement>? Circuit { get; private init; }

    /// <summary>Where sprays land, and what zones get; null where the document has neither zones nor coverage.</summary>
    public Answered<CoverageResult, CoverageJudgement>? Coverage { get; private init; }

    /// <summary>What a test says of the built system; null where the document has none, or nothing explains it.</summary>
    public Answered<CalibrationResult, CalibrationJudgement>? Calibration { get; private init; }

    /// <summary>Dates, weight and gauge; null where the document has no service, or no day was given.</summary>
    public Answered<UpkeepResult, UpkeepJudgement>? Upkeep { get; private init; }

    /// <summary>What came of every part, one entry a part in the order of <see cref="JobPart"/>.</summary>
    public required ImmutableArray<PartAnswer> Parts { get; init; }

    /// <summary>The worst verdict of the parts that there are.</summary>
    public Severity Verdict => Parts.Max(part => part.Verdict ?? Severity.Pass);

    /// <summary>All findings, the gravest first, else part by part; what several parts say in the same words stands once.</summary>
    public IEnumerable<Finding> AllFindings => Parts.SelectMany(part => part.Findings).DistinctBy(finding => (finding.Code, finding.Message)).OrderByDescending(finding => finding.Severity);

    /// <summary>What the document left open for any part, each once.</summary>
    public IEnumerable<Assumption> Assumptions => Parts.SelectMany(part => part.Assumptions).Distinct();

    /// <summary>What to keep in mind before relying on any of it.</summary>
    public ImmutableArray<string> Cautions => Circuit is null ? FlowCalc.Findings.Cautions.For(Layout) : FlowCalc.Findings.Cautions.OfCircuit(Layout);

    /// <summary>Works everything out.</summary>
    /// <param name="layout">A checked layout.</param>
    /// <param name="ask">What is asked beside it.</param>
    /// <param name="scheduler">Where cases of the discharge run beside the caller's thread.</param>
    /// <param name="cancel">Asked throughout.</param>
    /// <returns>The answers. A part that the document has no data for says so, and one that fails does not keep the others from theirs.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static LayoutCheck Of(Layout layout, CheckAsk ask, TaskScheduler scheduler, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(ask);
        ArgumentNullException.ThrowIfNull(scheduler);
        var work = new PartWork(layout, ask, scheduler, cancel);
        var (flow, flowPart) = work.Flow();
        var (discharge, dischargePart) = work.Discharge();
        var (cuts, cutsPart) = work.CutList();
        var (mount, mountPart) = work.Mount();
        var (circuit, circuitPart) = work.Circuit();
        var (coverage, coveragePart) = work.Coverage(flow?.Result, discharge?.Result);
        var (upkeep, upkeepPart) = work.Upkeep();
        var (calibration, calibrationPart) = work.Calibration();
        return new(layout, ask)
        {
            Flow = flow,
            Discharge = discharge,
            CutList = cuts,
            Mount = mount,
            Circuit = circuit,
            Coverage = coverage,
            Upkeep = upkeep,
            Calibration = calibration,
            Parts = [flowPart, dischargePart, cutsPart, mountPart, circuitPart, coveragePart, upkeepPart, calibrationPart],
        };
    }
}

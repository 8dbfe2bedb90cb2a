using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Calibration;
using FlowCalc.Api.Circuits;
using FlowCalc.Api.Coverage;
using FlowCalc.Api.CutLists;
using FlowCalc.Api.Discharge;
using FlowCalc.Api.Flow;
using FlowCalc.Api.Mounts;
using FlowCalc.Api.Upkeep;

namespace FlowCalc.Api.Checks;

/// <summary>Everything that a layout has data for, under one verdict.</summary>
/// <param name="Verdict">The worst verdict of the parts that are answered; <c>fail</c> too where one was asked for and could not be.</param>
/// <param name="Findings">The findings of all parts, worst first; what several parts say in the same words stands once.</param>
/// <param name="Parts">What came of every part, and why there is no answer where there is none.</param>
/// <param name="Flow">As <c>/v1/flow</c> answers; null where it did not converge.</param>
/// <param name="Discharge">As <c>/v1/discharge</c> answers; null where the supply is no bottle.</param>
/// <param name="CutList">As <c>/v1/cut-list</c> answers.</param>
/// <param name="Mount">As <c>/v1/mount</c> answers; null where the document has none.</param>
/// <param name="Circuit">As <c>/v1/circuit</c> answers; null where the document has none.</param>
/// <param name="Coverage">As <c>/v1/coverage</c> answers; null where the document has neither zones nor coverage.</param>
/// <param name="Upkeep">As <c>/v1/upkeep</c> answers; null where the document has no service or the request no day.</param>
/// <param name="Calibration">As <c>/v1/calibrate</c> answers; null where the document has no test, or nothing explains it.</param>
/// <param name="Cautions">What to keep in mind before relying on the answer.</param>
/// <param name="Engine">What gave the answer.</param>
public sealed record CheckAnswer(
    [property: AllowedValues("pass", "note", "warn", "fail")] string Verdict,
    ImmutableArray<FindingAnswer> Findings,
    ImmutableArray<PartVerdictAnswer> Parts,
    FlowAnswer? Flow,
    DischargeAnswer? Discharge,
    CutListAnswer CutList,
    MountAnswer? Mount,
    CircuitAnswer? Circuit,
    CoverageAnswer? Coverage,
    UpkeepAnswer? Upkeep,
    CalibrationAnswer? Calibration,
    ImmutableArray<string> Cautions,
    EngineAnswer Engine);

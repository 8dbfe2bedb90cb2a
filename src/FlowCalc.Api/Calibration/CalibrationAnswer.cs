using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Calibration;

/// <summary>What the readings of a test say of the system that was built.</summary>
/// <param name="Verdict">The worst severity of the findings; <c>pass</c> where there are none.</param>
/// <param name="Findings">What the engine noticed, worst first.</param>
/// <param name="Test">How it was tested.</param>
/// <param name="Readings">Every reading, beside what the layout as drawn and the likeliest cause give.</param>
/// <param name="Likeliest">The likeliest cause: the layout as drawn, unless another has a score less than its by over 6.</param>
/// <param name="Causes">The causes that were tried, least score first; at most 20 of them, and the layout as drawn.</param>
/// <param name="FurtherCauses">How many were tried besides.</param>
/// <param name="LeftOut">Causes without an answer; at most 20 of them.</param>
/// <param name="AsBuilt">The system as built, with its own agent and supply.</param>
/// <param name="Assumptions">What the document left open of the test, and what was taken.</param>
/// <param name="Limits">The limits that the findings were held against.</param>
/// <param name="Cautions">What to keep in mind before relying on the answer.</param>
/// <param name="Engine">What gave the answer.</param>
public sealed record CalibrationAnswer(
    [property: AllowedValues("pass", "note", "warn", "fail")] string Verdict,
    ImmutableArray<FindingAnswer> Findings,
    TestAnswer Test,
    ImmutableArray<ReadingAnswer> Readings,
    CauseAnswer Likeliest,
    ImmutableArray<CauseAnswer> Causes,
    int FurtherCauses,
    ImmutableArray<LeftOutAnswer> LeftOut,
    AsBuiltAnswer AsBuilt,
    ImmutableArray<Assumption> Assumptions,
    ImmutableArray<LimitAnswer> Limits,
    ImmutableArray<string> Cautions,
    EngineAnswer Engine);

using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Upkeep;

/// <summary>Dates, weight and gauge of a bottle on the day that is asked for, and what there is to say about them.</summary>
/// <param name="Verdict">The worst severity of the findings; <c>pass</c> where there are none.</param>
/// <param name="Findings">What the engine noticed, worst first.</param>
/// <param name="Today">The day that is asked for, ISO 8601.</param>
/// <param name="Next">Name of the rule that falls due first; null where none has a date.</param>
/// <param name="NextDue">The last day on which that is still good; null where none has a date.</param>
/// <param name="Dates">What falls due: the usual rules, then the document's own.</param>
/// <param name="Gauge">What the gauge shows; null where neither a temperature is asked for nor a reading given, and without a bottle.</param>
/// <param name="Weight">What the weighing says; null where the document has none.</param>
/// <param name="Assumptions">What the document left open of the service, and what was taken.</param>
/// <param name="Limits">The limits that the findings were held against.</param>
/// <param name="Cautions">What to keep in mind before relying on the answer.</param>
/// <param name="Engine">What gave the answer.</param>
public sealed record UpkeepAnswer(
    [property: AllowedValues("pass", "note", "warn", "fail")] string Verdict,
    ImmutableArray<FindingAnswer> Findings,
    string Today,
    string? Next,
    string? NextDue,
    ImmutableArray<DueDateAnswer> Dates,
    GaugeAnswer? Gauge,
    WeightAnswer? Weight,
    ImmutableArray<Assumption> Assumptions,
    ImmutableArray<LimitAnswer> Limits,
    ImmutableArray<string> Cautions,
    EngineAnswer Engine);

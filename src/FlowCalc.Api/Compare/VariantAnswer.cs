using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Discharge;
using FlowCalc.Api.Flow;

namespace FlowCalc.Api.Compare;

/// <summary>One of the layouts compared.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Changes">What was set in the base; empty for the base itself and for a layout given as a whole.</param>
/// <param name="Verdict">The worse verdict of its flow and its discharge.</param>
/// <param name="Fails">Places of failing findings; one that flow and discharge both find counts once.</param>
/// <param name="Warns">Places of warnings, counted alike.</param>
/// <param name="WorstNozzle">Id of the nozzle furthest from its wanted share: by mass over the cases of the discharge, else by flow; null where nothing is wanted of any.</param>
/// <param name="WorstDeviation">That nozzle's deviation.</param>
/// <param name="SlowestTime">The longest time over the cases until the required part, else 95 % of the contents, was out; null without a discharge and where no case comes to it.</param>
/// <param name="Failure">Why there is no flow; null where there is one.</param>
/// <param name="Flow">What <c>/v1/flow</c> answers; null where no flow was found.</param>
/// <param name="Discharge">What <c>/v1/discharge</c> answers, without its series; null where the supply is no bottle.</param>
public sealed record VariantAnswer(
    string Name,
    ImmutableArray<ChangeAnswer> Changes,
    [property: AllowedValues("pass", "note", "warn", "fail")] string Verdict,
    int Fails,
    int Warns,
    string? WorstNozzle,
    double? WorstDeviation,
    Quantity? SlowestTime,
    string? Failure,
    FlowAnswer? Flow,
    DischargeAnswer? Discharge);

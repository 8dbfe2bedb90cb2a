using System.ComponentModel.DataAnnotations;
using FlowCalc.Findings;

namespace FlowCalc.Api.Answers;

/// <summary>The answer that a changed layout gives, in short.</summary>
/// <param name="Verdict">Its verdict.</param>
/// <param name="Fails">Its findings that fail.</param>
/// <param name="Warns">Its findings that warn.</param>
/// <param name="WorstNozzle">Id of the nozzle furthest from its wanted share, of a discharge in any case; null where nothing is wanted of any.</param>
/// <param name="WorstDeviation">Its share over the wanted share, less 1; null where there is no such nozzle.</param>
/// <param name="SlowestCase">Of a discharge the case that takes longest to what is required, or to 95 % of the contents where nothing is; null of a flow.</param>
/// <param name="SlowestTime">That time; null where it never comes, and of a flow.</param>
public sealed record CureOutcomeAnswer(
    [property: AllowedValues("pass", "note", "warn", "fail")] string Verdict, int Fails, int Warns, string? WorstNozzle, double? WorstDeviation, string? SlowestCase, Quantity? SlowestTime)
{
    internal static CureOutcomeAnswer Of(CureOutcome outcome, UnitWriter write) => new(
        SeverityWord.Of(outcome.Verdict), outcome.Fails, outcome.Warns, outcome.WorstNozzle, UnitWriter.Plain(outcome.WorstDeviation), outcome.SlowestCase, write.Of(outcome.SlowestTime));
}

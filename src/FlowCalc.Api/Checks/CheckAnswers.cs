using System.Text.Json;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Calibration;
using FlowCalc.Api.Circuits;
using FlowCalc.Api.Coverage;
using FlowCalc.Api.CutLists;
using FlowCalc.Api.Discharge;
using FlowCalc.Api.Flow;
using FlowCalc.Api.Mounts;
using FlowCalc.Api.Upkeep;
using FlowCalc.Checks;

namespace FlowCalc.Api.Checks;

/// <summary>Writes a check as an answer.</summary>
internal static class CheckAnswers
{
    /// <summary>The answer.</summary>
    /// <exception cref="NotFiniteException">A number of a result is not finite.</exception>
    public static CheckAnswer Of(LayoutCheck check, UnitWriter write)
    {
        var layout = check.Layout;
        return new(
            SeverityWord.Of(check.Verdict),
            [.. check.AllFindings.Select(finding => FindingAnswer.Of(finding, write))],
            [.. check.Parts.Select(part => new PartVerdictAnswer(Word(part.Part), part.Verdict is { } verdict ? SeverityWord.Of(verdict) : null, part.Why))],
            check.Flow is { } flow ? FlowAnswers.Of(layout, flow.Result, flow.Judgement, write) : null,
            check.Discharge is { } discharge ? DischargeAnswers.Of(layout, discharge.Result, discharge.Judgement, write) : null,
            CutListAnswers.Of(layout, check.CutList.Result, check.CutList.Judgement, write),
            check.Mount is { } mount ? MountAnswers.Of(layout, mount.Result, mount.Judgement, write) : null,
            check.Circuit is { } circuit ? CircuitAnswers.Of(layout, layout.Circuit!, circuit.Result, circuit.Judgement, write) : null,
            check.Coverage is { } coverage ? CoverageAnswers.Of(layout, coverage.Result, check.Discharge?.Result, coverage.Judgement, write) : null,
            check.Upkeep is { } upkeep ? UpkeepAnswers.Of(layout, upkeep.Result, upkeep.Judgement, write) : null,
            check.Calibration is { } calibration ? CalibrationAnswers.Of(layout, calibration.Result, calibration.Judgement, write) : null,
            check.Cautions,
            Engine.Answer);
    }

    static string Word(JobPart part) => JsonNamingPolicy.CamelCase.ConvertName(part.ToString());
}

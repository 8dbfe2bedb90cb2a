using FlowCalc.Api.Answers;
using FlowCalc.Findings;
using FlowCalc.Workbench.Reports.Blocks;

namespace FlowCalc.Cli;

/// <summary>What came of a job.</summary>
/// <param name="Verdict">Its verdict.</param>
/// <param name="Json">Writes it as the service answers.</param>
/// <param name="Blocks">What a person reads.</param>
/// <param name="Findings">What was found.</param>
/// <param name="Cautions">What to keep in mind before relying on it.</param>
sealed record Outcome(Severity Verdict, Action<JsonText> Json, IEnumerable<ReportBlock> Blocks, IEnumerable<Finding> Findings, IEnumerable<string> Cautions);

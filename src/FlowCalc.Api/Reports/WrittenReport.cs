using FlowCalc.Workbench.Reports;

namespace FlowCalc.Api.Reports;

/// <summary>A report that was worked out.</summary>
/// <param name="Content">What it says.</param>
/// <param name="Pdf">The file, where that was asked for; null for a page.</param>
internal sealed record WrittenReport(ReportContent Content, byte[]? Pdf);

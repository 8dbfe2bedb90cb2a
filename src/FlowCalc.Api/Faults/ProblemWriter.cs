using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Faults;

/// <summary>Writes a problem as the answer, whatever the caller says to accept: a fault must reach its reader.</summary>
internal static class ProblemWriter
{
    public const string ContentType = "application/problem+json";

    public static Task WriteAsync(HttpContext context, Problem problem) =>
        AnswerWriter.WriteAsync(context, problem, AnswerJson.Default.Problem, problem.Status, ContentType);
}

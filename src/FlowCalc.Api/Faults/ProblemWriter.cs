using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Faults;

/// <summary>Writes a problem as the answer, whatever the caller says to accept: a fault must reach its reader.</summary>
internal static class ProblemWriter
{
    public const string ContentType = "application/problem+json";

    // A place or room is there again as soon as any request is done.
    const string Soonest = "1";

    /// <summary>Writes a problem. A caller for whom there is too much going on is told when to try again, where nobody has set that yet.</summary>
    public static Task WriteAsync(HttpContext context, Problem problem)
    {
        var headers = context.Response.Headers;
        if (problem.Status == StatusCodes.Status429TooManyRequests && headers.RetryAfter.Count == 0) headers.RetryAfter = Soonest;
        return AnswerWriter.WriteAsync(context, problem, AnswerJson.Default.Problem, problem.Status, ContentType);
    }
}

using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;

namespace FlowCalc.Api.Hosting;

/// <summary><c>GET /health/live</c> and <c>GET /health/ready</c>.</summary>
internal static class HealthEndpoints
{
    /// <summary>Puts the calls on the service; no limit of requests holds for them.</summary>
    public static void MapHealth(this IEndpointRouteBuilder app)
    {
        app.MapGet("/health/live", (Delegate)((HttpContext context) => WriteAsync(context, "live")))
            .DisableRateLimiting()
            .WithName("Live").WithTags("Health")
            .WithSummary("Whether the process runs")
            .WithDescription("Answers 200 as long as the process takes requests.")
            .DescribeHealth("live", canFail: false);
        app.MapGet("/health/ready", (HttpContext context, Readiness readiness) =>
                readiness.IsReady ? WriteAsync(context, "ready") : WriteAsync(context, "starting", StatusCodes.Status503ServiceUnavailable))
            .DisableRateLimiting()
            .WithName("Ready").WithTags("Health")
            .WithSummary("Whether the service can answer")
            .WithDescription("Answers 200 once the service has solved its own demo layout, 503 before that.")
            .DescribeHealth("ready", canFail: true);
    }

    static Task WriteAsync(HttpContext context, string status, int code = StatusCodes.Status200OK)
    {
        context.Response.Headers.CacheControl = "no-store";
        return AnswerWriter.WriteAsync(context, new HealthAnswer(status), AnswerJson.Default.HealthAnswer, code);
    }
}

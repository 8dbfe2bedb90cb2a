using Microsoft.AspNetCore.Diagnostics;

namespace FlowCalc.Api.Faults;

/// <summary>Turns whatever went wrong outside the endpoints into problem details.</summary>
internal static class FaultHandling
{
    /// <summary>The same behaviour in every environment: bad requests are thrown, and answered by the one handler.</summary>
    public static void AddFaults(this WebApplicationBuilder builder)
    {
        builder.Services.Configure<RouteHandlerOptions>(options => options.ThrowOnBadRequest = true);
        builder.Services.Configure<ExceptionHandlerOptions>(options =>
        {
            options.StatusCodeSelector = StatusOf;
            options.ExceptionHandler = AnswerException;
            // A bad request is the caller's business, not the log's.
            options.SuppressDiagnosticsCallback = thrown => thrown.Exception is BadHttpRequestException;
        });
    }

    /// <summary>Answers exceptions, and statuses that were set without a body.</summary>
    public static void UseFaults(this IApplicationBuilder app)
    {
        app.UseExceptionHandler();
        app.UseStatusCodePages(bare => ProblemWriter.WriteAsync(bare.HttpContext, Problems.Bare(bare.HttpContext.Response.StatusCode, bare.HttpContext)));
    }

    static int StatusOf(Exception thrown) => thrown is BadHttpRequestException bad ? bad.StatusCode : StatusCodes.Status500InternalServerError;

    static Task AnswerException(HttpContext context)
    {
        var thrown = context.Features.Get<IExceptionHandlerFeature>()?.Error;
        var problem = thrown is BadHttpRequestException bad
            ? Problems.Of(bad.StatusCode, bad.Message)
            : Problems.Bare(StatusCodes.Status500InternalServerError, context);
        return ProblemWriter.WriteAsync(context, problem);
    }
}

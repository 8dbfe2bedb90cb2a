using System.Diagnostics;
using Microsoft.AspNetCore.Diagnostics;

namespace FlowCalc.Api.Faults;

/// <summary>Turns whatever went wrong outside the endpoints into problem details.</summary>
internal static partial class FaultHandling
{
    /// <summary>The same behaviour in every environment: bad requests are thrown, and answered by the one handler.</summary>
    public static void AddFaults(this WebApplicationBuilder builder)
    {
        builder.Services.Configure<RouteHandlerOptions>(options => options.ThrowOnBadRequest = true);
        builder.Services.Configure<ExceptionHandlerOptions>(options =>
        {
            options.StatusCodeSelector = StatusOf;
            options.ExceptionHandler = AnswerException;
            // A bad request is the caller's business, not the log's; all else is logged once, under the id that the caller is told.
            options.SuppressDiagnosticsCallback = _ => true;
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
        if (thrown is BadHttpRequestException bad) return ProblemWriter.WriteAsync(context, Problems.Of(bad.StatusCode, bad.Message));
        var trace = Activity.Current?.TraceId.ToHexString() ?? context.TraceIdentifier;
        Unforeseen(context.RequestServices.GetRequiredService<ILoggerFactory>().CreateLogger(typeof(FaultHandling)), thrown, trace, context.Request.Method, context.Request.Path);
        return ProblemWriter.WriteAsync(context, Problems.Unforeseen(trace));
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "The request {Trace} ({Method} {Path}) ended with an unforeseen error.")]
    static partial void Unforeseen(ILogger log, Exception? unforeseen, string trace, string method, string path);
}

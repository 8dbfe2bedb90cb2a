using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Requests;

namespace FlowCalc.Api.Jobs;

/// <summary><c>/v1/jobs/{id}</c>: a long study, its state, its progress and its end.</summary>
internal static class JobEndpoints
{
    /// <summary>Where a job is found.</summary>
    public static string PathOf(Job job) => $"/v1/jobs/{job.Id}";

    /// <summary>Registers the store of jobs, which stops them when the service stops.</summary>
    public static void AddJobs(this WebApplicationBuilder builder)
    {
        builder.Services.AddSingleton(TimeProvider.System);
        builder.Services.AddSingleton<JobStore>();
        builder.Services.AddHostedService(services => services.GetRequiredService<JobStore>());
    }

    /// <summary>Puts the calls on the service.</summary>
    public static void MapJobs(this IEndpointRouteBuilder app)
    {
        app.MapGet("/v1/jobs/{id}", Read).WithName("Job").WithTags("Jobs").WithSummary("State of a job, and its answer").DescribeJob();
        app.MapDelete("/v1/jobs/{id}", Remove).WithName("RemoveJob").WithTags("Jobs").WithSummary("Stop a job, or forget one that has ended").DescribeRemoval();
        app.MapGet("/v1/jobs/{id}/events", Listen).WithName("JobEvents").WithTags("Jobs").WithSummary("Progress of a job as it happens").DescribeEvents();
    }

    static Task Read(HttpContext context, string id, JobStore jobs, ServiceLimits limits, HeldBytes held)
    {
        if (QueryUnits.RefuseAny(context.Request) is { } fault) return ProblemWriter.WriteAsync(context, fault);
        if (jobs.Find(id) is not { } job) return ProblemWriter.WriteAsync(context, Problems.NoJob(id));
        // An answer may be long: it waits where it is until others have gone out.
        if (held.IsFull) return ProblemWriter.WriteAsync(context, Problems.NoRoom(limits));
        context.Response.Headers.CacheControl = "no-store";
        return AnswerWriter.WriteAsync(context, job, JobAnswers.Write);
    }

    static Task Remove(HttpContext context, string id, JobStore jobs)
    {
        if (QueryUnits.RefuseAny(context.Request) is { } fault) return ProblemWriter.WriteAsync(context, fault);
        if (!jobs.Remove(id)) return ProblemWriter.WriteAsync(context, Problems.NoJob(id));
        context.Response.StatusCode = StatusCodes.Status204NoContent;
        return Task.CompletedTask;
    }

    static async Task Listen(HttpContext context, string id, JobStore jobs, TimeProvider clock)
    {
        var fault = QueryUnits.RefuseAny(context.Request);
        var job = fault is null ? jobs.Find(id) : null;
        if (job is null)
        {
            await ProblemWriter.WriteAsync(context, fault ?? Problems.NoJob(id));
            return;
        }
        if (!job.TryListen(JobEvents.MostListeners))
        {
            await ProblemWriter.WriteAsync(context, Problems.TooManyListeners(JobEvents.MostListeners));
            return;
        }
        // A service that stops ends its jobs, and with them this.
        await TypedResults.ServerSentEvents(JobEvents.Of(job, clock, context.RequestAborted)).ExecuteAsync(context);
    }
}

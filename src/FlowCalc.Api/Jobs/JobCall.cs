using FlowCalc.Api.Answers;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Requests;

namespace FlowCalc.Api.Jobs;

/// <summary>A call that its caller would rather not wait for: <c>Prefer: respond-async</c> of RFC 7240.</summary>
internal static class JobCall
{
    const string Preference = "respond-async";

    /// <summary>Whether the caller prefers a job.</summary>
    public static bool IsPreferred(HttpRequest request)
    {
        foreach (var line in request.Headers["Prefer"])
            foreach (var preference in (line ?? "").Split(','))
                if (preference.Split(';')[0].Trim().Equals(Preference, StringComparison.OrdinalIgnoreCase)) return true;
        return false;
    }

    /// <summary>Reads the request and hands its work in: 202 with where the job is, or the fault.</summary>
    /// <param name="context">The request.</param>
    /// <param name="limits">Limits of the service.</param>
    /// <param name="jobs">The jobs.</param>
    /// <param name="longest">Longest time for reading the request.</param>
    /// <param name="read">Reads its body.</param>
    /// <param name="work">What is to be worked out, in the units asked for, and whether it is to be explained.</param>
    /// <param name="count">How much there is to explain.</param>
    /// <param name="what">What that counts.</param>
    public static Task HandInAsync<TRequest>(
        HttpContext context, ServiceLimits limits, JobStore jobs, TimeSpan longest, BodyReader<TRequest> read, Func<TRequest, UnitWriter, bool, IJobWork> work,
        Func<TRequest, long> count, string what)
        where TRequest : class
    {
        return DocumentCall.AnswerAsync(context, limits, longest, read, HandIn(explains: false), JobAnswers.Write, new ExplainedWork<TRequest, Job>(HandIn(explains: true), count, what));

        DocumentWork<TRequest, Job> HandIn(bool explains) => (TRequest request, UnitWriter write, out Problem? fault, CancellationToken cancel) =>
        {
            var job = jobs.Submit(work(request, write, explains), out fault);
            if (job is null)
            {
                if (fault!.Status == StatusCodes.Status429TooManyRequests) context.Response.Headers.RetryAfter = "5";
                return null;
            }
            context.Response.StatusCode = StatusCodes.Status202Accepted;
            context.Response.Headers.Location = JobEndpoints.PathOf(job);
            context.Response.Headers["Preference-Applied"] = Preference;
            return job;
        };
    }
}

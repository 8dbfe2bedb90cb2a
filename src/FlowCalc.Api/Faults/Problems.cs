using System.Collections.Immutable;
using System.Globalization;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Requests;
using FlowCalc.Layouts;
using Microsoft.AspNetCore.WebUtilities;

namespace FlowCalc.Api.Faults;

/// <summary>Every fault that the service states, in one place.</summary>
internal static class Problems
{
    /// <summary>A problem that the status says all about.</summary>
    public static Problem Of(int status, string detail, IReadOnlyDictionary<string, string[]>? errors = null) =>
        new("about:blank", ReasonPhrases.GetReasonPhrase(status) is { Length: > 0 } title ? title : "Error", status, detail, errors);

    public static Problem EmptyBody() => Of(400, "The body is empty; it should be a layout document in JSON. GET /v1/examples lists examples, GET /v1/layout-schema describes it.");

    public static Problem NotJson(string why) => Of(400, "The body is not JSON: " + why);

    public static Problem NotUtf8(int offset) => Of(400, Invariant($"The body is not UTF-8 text: the byte at offset {offset} does not belong to a character."));

    public static Problem TooLarge(ServiceLimits limits) => Of(413, Invariant($"The body is larger than {limits.BodyBytes} bytes, the most that this service takes."));

    public static Problem NoKey() => Of(401, "This service asks callers from other machines for a key, as a bearer token or as the password of Basic authentication, and this request has none that it knows.");

    public static Problem WrongType(string? read) =>
        Of(415, $"The content type is {(string.IsNullOrEmpty(read) ? "missing" : $"\"{Shortened(read)}\"")}; send application/json, or a type that ends in +json, in UTF-8.");

    public static Problem Encoded(string read) => Of(415, $"The body is encoded as \"{Shortened(read)}\"; send it as it is, without a content encoding.");

    public static Problem Query(string name, string message) =>
        Of(422, "The query does not fit this call.", new Dictionary<string, string[]> { ["?" + Shortened(name)] = [message] });

    /// <summary>Two faults of a query, so that both are told at once.</summary>
    /// <param name="one">A fault of a query; null for none.</param>
    /// <param name="other">Another.</param>
    public static Problem Together(Problem? one, Problem other)
    {
        if (one?.Errors is null) return other;
        var errors = new Dictionary<string, string[]>(one.Errors, StringComparer.Ordinal);
        foreach (var (name, messages) in other.Errors ?? new Dictionary<string, string[]>())
            errors[name] = messages;
        return one with { Errors = errors };
    }

    public static Problem TooMuchToExplain(long count, string what, int most) => Query(LayoutQuery.Explain, Invariant(
        $"There are {count} {what} to explain; at most {most} are explained. Ask without it, or with fewer."));

    public static Problem NoSuch(string what, string id, string where) => Of(404, $"There is no {what} \"{Shortened(id)}\"; GET {where} lists those that there are.");

    /// <summary>What was wrong in a body, by pointer.</summary>
    public static Problem Unread(ImmutableArray<LayoutFault> faults)
    {
        var errors = new Dictionary<string, string[]>(StringComparer.Ordinal);
        foreach (var fault in faults.GroupBy(fault => fault.Pointer, fault => fault.Message, StringComparer.Ordinal))
            errors[fault.Key] = [.. fault];
        return Of(422, faults.Length == 1 ? "One thing in the document makes no sense." : Invariant($"{faults.Length} things in the document make no sense."), errors);
    }

    public static Problem NoAnswer(string why) =>
        Of(422, "The layout was understood, but its flow was not found.", new Dictionary<string, string[]> { [""] = [why] });

    public static Problem NotWritten(string why) =>
        Of(422, "The layout was understood, but the format cannot hold it.", new Dictionary<string, string[]> { [""] = [why + "."] });

    public static Problem TooSlow(TimeSpan limit) =>
        Of(422, "The layout takes too long to answer.", new Dictionary<string, string[]>
        {
            [""] = [Invariant($"The answer was not ready within {limit.TotalSeconds} s, the longest that this call may take. A layout with fewer points takes less, a discharge with fewer cases, a study with fewer samples.")],
        });

    /// <summary>A layout that was read and asks for more than one answer holds.</summary>
    public static Problem TooMuch(FormattableString why) =>
        Of(422, "The layout is too large for this call.", new Dictionary<string, string[]> { [""] = [Invariant(why)] });

    public static Problem Busy(ServiceLimits limits) =>
        Of(429, Invariant($"The service is busy: {limits.Workers} requests are worked on and {limits.Waiting} wait. Try again after the time in Retry-After, in seconds."));

    public static Problem NoRoom(ServiceLimits limits) =>
        Of(429, Invariant($"The service is busy: bodies that arrive or wait and answers that are sent hold {limits.HeldBytes} bytes, all that it has for them. Try again after the time in Retry-After, in seconds."));

    public static Problem ShuttingDown() => Of(503, "The service is shutting down and takes no job any more.");

    public static Problem TooManyJobs(ServiceLimits limits) =>
        Of(429, Invariant($"{limits.JobsRunning} jobs run and {limits.JobsWaiting} wait, as many as this service takes. Try again after the time in Retry-After, in seconds."));

    public static Problem TooManyListeners(int most) => Of(429, Invariant($"{most} callers listen to this job already; GET the job itself, or try again after the time in Retry-After, in seconds."));

    public static Problem NoJob(string id) => Of(404, $"There is no job \"{Shortened(id)}\", or none any more: a job that has ended is kept for a while only.");

    public static Problem TooOften(ServiceLimits limits) =>
        Of(429, Invariant($"More than {limits.RequestsPerMinute} requests a minute came from this address. Try again after the time in Retry-After, in seconds."));

    /// <summary>What a status says that was set without a body, by routing for one.</summary>
    public static Problem Bare(int status, HttpContext context) => status switch
    {
        404 => Of(404, "There is nothing at this path; /openapi/v1.json lists the calls, /docs shows them."),
        405 => Of(405, $"This path does not take {Shortened(context.Request.Method)}; it takes {context.Response.Headers.Allow}."),
        _ => Of(status, "The request was not answered."),
    };

    /// <summary>What nobody foresaw: an id under which the log has it whole, and nothing of the inside.</summary>
    public static Problem Unforeseen(string trace) => Of(500, $"Something went wrong inside the service. The request was not answered; nothing was kept. The service's log has it under the trace id {trace}.");

    /// <summary>The same of a job, which is no request any more.</summary>
    public static Problem UnforeseenOfJob(string trace) => Of(500, $"Something went wrong inside the service. The job has no answer. The service's log has it under the trace id {trace}.");

    /// <summary>A body that did not arrive in time.</summary>
    public static Problem TooLate(TimeSpan limit) => Of(408, Invariant($"The body had not arrived after {limit.TotalSeconds} s, the longest that a sender may take."));

    static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    /// <summary>A text of the caller for a message, at most 80 characters of it.</summary>
    public static string Shortened(string text) => text.Length <= 80 ? text : string.Concat(text.AsSpan(0, 80), "…");
}

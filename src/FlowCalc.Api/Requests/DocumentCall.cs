using System.Diagnostics;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Operations;

namespace FlowCalc.Api.Requests;

/// <summary>What a call works out.</summary>
/// <typeparam name="TRequest">What its body describes.</typeparam>
/// <typeparam name="TAnswer">Its answer.</typeparam>
/// <param name="request">What the body describes.</param>
/// <param name="write">The units of the answer.</param>
/// <param name="fault">Why there is no answer; null where there is one.</param>
/// <param name="cancel">The time is up, or the caller has gone.</param>
/// <returns>The answer; null where there is a fault.</returns>
internal delegate TAnswer? DocumentWork<TRequest, TAnswer>(TRequest request, UnitWriter write, out Problem? fault, CancellationToken cancel)
    where TRequest : class
    where TAnswer : class;

/// <summary>A call that takes a document as its body and answers from it alone: its query, body, time and faults.</summary>
internal static class DocumentCall
{
    /// <summary>Reads the request, works and writes answer or fault.</summary>
    /// <param name="context">The request.</param>
    /// <param name="limits">Limits of the service.</param>
    /// <param name="longest">Longest time on this call, from when the body has arrived.</param>
    /// <param name="read">Reads its body.</param>
    /// <param name="work">What it works out.</param>
    /// <param name="writer">Writes its answer.</param>
    /// <param name="explained">What it works out where the query asks for an explanation; null for a call that has none.</param>
    /// <param name="others">Names of the query that the call has read itself.</param>
    public static Task AnswerAsync<TRequest, TAnswer>(
        HttpContext context, ServiceLimits limits, TimeSpan longest, BodyReader<TRequest> read, DocumentWork<TRequest, TAnswer> work, Action<JsonText, TAnswer> writer,
        ExplainedWork<TRequest, TAnswer>? explained = null, params string[] others)
        where TRequest : class
        where TAnswer : class =>
        AnswerAsync(context, limits, longest, read, work, answer => AnswerWriter.WriteAsync(context, answer, writer), explained, others);

    /// <summary>Reads the request, works, and delivers the answer or writes the fault.</summary>
    /// <param name="context">The request.</param>
    /// <param name="limits">Limits of the service.</param>
    /// <param name="longest">Longest time on this call, from when the body has arrived.</param>
    /// <param name="read">Reads its body.</param>
    /// <param name="work">What it works out.</param>
    /// <param name="deliver">Writes its answer into the response.</param>
    /// <param name="explained">What it works out where the query asks for an explanation; null for a call that has none.</param>
    /// <param name="others">Names of the query that the call has read itself.</param>
    public static async Task AnswerAsync<TRequest, TAnswer>(
        HttpContext context, ServiceLimits limits, TimeSpan longest, BodyReader<TRequest> read, DocumentWork<TRequest, TAnswer> work, Func<TAnswer, Task> deliver,
        ExplainedWork<TRequest, TAnswer>? explained, string[] others)
        where TRequest : class
        where TAnswer : class
    {
        var meter = context.RequestServices.GetRequiredService<ServiceMeter>();
        var began = Stopwatch.GetTimestamp();
        var outcome = ServiceMeter.Fault;
        var query = LayoutQuery.Read(context.Request, explained is not null, others, out var fault);
        fault ??= JsonContentType.Fault(context.Request);
        if (fault is null)
        {
            var (received, late) = await ReceiveAsync(context, limits);
            using var body = received;
            fault = late ? Problems.TooLate(limits.BodyTime) : body is null ? Problems.TooLarge(limits) : null;
            began = Stopwatch.GetTimestamp();
            if (body is not null && Answer(body.Bytes, longest, query.Write, read, query.Explains ? Bounded(explained!, limits) : work, out fault, ref outcome, context.RequestAborted) is { } answer)
            {
                meter.Count(CallOf(context), ServiceMeter.Answered, began);
                await deliver(answer);
                return;
            }
        }
        meter.Count(CallOf(context), outcome, began);
        await ProblemWriter.WriteAsync(context, fault!);
    }

    // A place of work is held while the body arrives, so that takes no longer than the limit whatever a sender does.
    static async Task<(PooledBody? Body, bool IsLate)> ReceiveAsync(HttpContext context, ServiceLimits limits)
    {
        var received = await PooledBody.ReadAsync(context.Request, limits.BodyBytes, limits.BodyTime, context.RequestAborted);
        // What is left of a late body is not waited for.
        if (received.IsLate) context.Response.Headers.Connection = "close";
        return received;
    }

    // The path as it is mapped: a caller may write it in other letters.
    static string CallOf(HttpContext context) => (context.GetEndpoint() as RouteEndpoint)?.RoutePattern.RawText ?? "";

    static DocumentWork<TRequest, TAnswer> Bounded<TRequest, TAnswer>(ExplainedWork<TRequest, TAnswer> explained, ServiceLimits limits)
        where TRequest : class
        where TAnswer : class =>
        (TRequest request, UnitWriter write, out Problem? fault, CancellationToken cancel) =>
        {
            var count = explained.Count(request);
            fault = count > limits.ExplainedPoints ? Problems.TooMuchToExplain(count, explained.What, limits.ExplainedPoints) : null;
            return fault is null ? explained.Work(request, write, out fault, cancel) : null;
        };

    static TAnswer? Answer<TRequest, TAnswer>(
        ReadOnlyMemory<byte> body, TimeSpan longest, UnitWriter write, BodyReader<TRequest> read, DocumentWork<TRequest, TAnswer> work, out Problem? fault, ref string outcome, CancellationToken gone)
        where TRequest : class
        where TAnswer : class
    {
        using var activity = ServiceMeter.Source.StartActivity("work");
        using var time = CancellationTokenSource.CreateLinkedTokenSource(gone);
        // Timers count whole milliseconds and may fire late: less than one is over at once.
        if (longest < TimeSpan.FromMilliseconds(1)) time.Cancel();
        else time.CancelAfter(longest);
        try
        {
            return JsonBody.Read(body, read, out fault, time.Token) is { } request ? work(request, write, out fault, time.Token) : null;
        }
        catch (OperationCanceledException) when (!gone.IsCancellationRequested)
        {
            (fault, outcome) = (Problems.TooSlow(longest), ServiceMeter.TooSlow);
        }
        catch (NotFiniteException notFinite)
        {
            fault = Problems.NoAnswer(notFinite.Message);
        }
        return null;
    }
}

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

/// <summary>Makes the text of an answer while its place of work is held.</summary>
/// <typeparam name="TAnswer">The answer.</typeparam>
/// <param name="answer">The answer.</param>
/// <param name="cancel">The time is up, or the caller has gone.</param>
/// <returns>The text; headers that go with it are set on the response once it is there.</returns>
internal delegate ValueTask<AnswerText> AnswerMaker<in TAnswer>(TAnswer answer, CancellationToken cancel);

/// <summary>A call that takes a document as its body and answers from it alone: its query, body, place, time and faults.</summary>
/// <remarks>A place of work is held from when the body is there until the answer's text is made, never while a caller sends or reads.</remarks>
internal static class DocumentCall
{
    /// <summary>Reads the request, works and writes answer or fault.</summary>
    /// <param name="context">The request.</param>
    /// <param name="limits">Limits of the service.</param>
    /// <param name="longest">Longest time on this call, from when its work begins.</param>
    /// <param name="read">Reads its body.</param>
    /// <param name="work">What it works out.</param>
    /// <param name="writer">Writes its answer.</param>
    /// <param name="explained">What it works out where the query asks for an explanation; null for a call that has none.</param>
    /// <param name="others">Names of the query that the call has read itself.</param>
    public static Task AnswerAsync<TRequest, TAnswer>(
        HttpContext context, ServiceLimits limits, TimeSpan longest, BodyReader<TRequest> read, DocumentWork<TRequest, TAnswer> work, Action<JsonText, TAnswer> writer,
        ExplainedWork<TRequest, TAnswer>? explained = null, params string[] others)
        where TRequest : class
        where TAnswer : class
    {
        return AnswerAsync(context, limits, longest, read, work, Make, explained, others);

        ValueTask<AnswerText> Make(TAnswer answer, CancellationToken cancel)
        {
            var text = AnswerText.Of(answer, writer);
            context.Response.ContentType = AnswerWriter.Json;
            return new(text);
        }
    }

    /// <summary>Reads the request, works, and sends the answer or writes the fault.</summary>
    /// <param name="context">The request.</param>
    /// <param name="limits">Limits of the service.</param>
    /// <param name="longest">Longest time on this call, from when its work begins.</param>
    /// <param name="read">Reads its body.</param>
    /// <param name="work">What it works out.</param>
    /// <param name="make">Makes the text of its answer.</param>
    /// <param name="explained">What it works out where the query asks for an explanation; null for a call that has none.</param>
    /// <param name="others">Names of the query that the call has read itself.</param>
    public static async Task AnswerAsync<TRequest, TAnswer>(
        HttpContext context, ServiceLimits limits, TimeSpan longest, BodyReader<TRequest> read, DocumentWork<TRequest, TAnswer> work, AnswerMaker<TAnswer> make,
        ExplainedWork<TRequest, TAnswer>? explained, string[] others)
        where TRequest : class
        where TAnswer : class
    {
        var began = Stopwatch.GetTimestamp();
        var query = LayoutQuery.Read(context.Request, explained is not null, others, out var fault);
        fault ??= JsonContentType.Fault(context.Request);
        var outcome = fault is null
            ? await InPlaceAsync(context, limits, began, body => WorkAsync(body, longest, query.Write, read, query.Explains ? Bounded(explained!, limits) : work, make, context.RequestAborted))
            : new CallOutcome(fault, ServiceMeter.Fault, began);
        context.RequestServices.GetRequiredService<ServiceMeter>().Count(CallOf(context), outcome.Word, outcome.Began);
        await (outcome.Text is { } text ? AnswerWriter.SendAsync(context, text) : ProblemWriter.WriteAsync(context, outcome.Fault!));
    }

    // The place is taken once the body is there, and both are left before anything is sent.
    static async Task<CallOutcome> InPlaceAsync(HttpContext context, ServiceLimits limits, long began, Func<ReadOnlyMemory<byte>, Task<CallOutcome>> work)
    {
        var (arrival, received) = await PooledBody.ReadAsync(context.Request, limits, context.RequestServices.GetRequiredService<HeldBytes>(), context.RequestAborted);
        using var body = received;
        if (body is null) return new(Refusal(context, limits, arrival), ServiceMeter.Fault, began);
        using var place = await context.RequestServices.GetRequiredService<WorkPlaces>().TakeAsync(context.RequestAborted);
        return place.IsAcquired ? await work(body.Bytes) : new(Problems.Busy(limits), ServiceMeter.Busy, began);
    }

    static Problem Refusal(HttpContext context, ServiceLimits limits, BodyArrival arrival)
    {
        if (arrival == BodyArrival.TooLarge) return Problems.TooLarge(limits);
        // What is left of the body is not waited for.
        context.Response.Headers.Connection = "close";
        return arrival == BodyArrival.Late ? Problems.TooLate(limits.BodyTime) : Problems.NoRoom(limits);
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

    static async Task<CallOutcome> WorkAsync<TRequest, TAnswer>(
        ReadOnlyMemory<byte> body, TimeSpan longest, UnitWriter write, BodyReader<TRequest> read, DocumentWork<TRequest, TAnswer> work, AnswerMaker<TAnswer> make, CancellationToken gone)
        where TRequest : class
        where TAnswer : class
    {
        var began = Stopwatch.GetTimestamp();
        using var activity = ServiceMeter.Source.StartActivity("work");
        using var time = CancellationTokenSource.CreateLinkedTokenSource(gone);
        // Timers count whole milliseconds and may fire late: less than one is over at once.
        if (longest < TimeSpan.FromMilliseconds(1)) time.Cancel();
        else time.CancelAfter(longest);
        try
        {
            var answer = JsonBody.Read(body, read, out var fault, time.Token) is { } request ? work(request, write, out fault, time.Token) : null;
            return answer is null ? new(fault!, ServiceMeter.Fault, began) : new(await make(answer, time.Token), began);
        }
        catch (OperationCanceledException) when (!gone.IsCancellationRequested)
        {
            return new(Problems.TooSlow(longest), ServiceMeter.TooSlow, began);
        }
        catch (NotFiniteException notFinite)
        {
            return new(Problems.NoAnswer(notFinite.Message), ServiceMeter.Fault, began);
        }
    }
}

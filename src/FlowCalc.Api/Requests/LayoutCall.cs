using FlowCalc.Api.Answers;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Layouts;

namespace FlowCalc.Api.Requests;

/// <summary>What a call on a layout works out.</summary>
/// <typeparam name="TAnswer">Its answer.</typeparam>
/// <param name="layout">The layout.</param>
/// <param name="write">The units of the answer.</param>
/// <param name="fault">Why there is no answer; null where there is one.</param>
/// <param name="cancel">The time is up, or the caller has gone.</param>
/// <returns>The answer; null where there is a fault.</returns>
internal delegate TAnswer? LayoutWork<TAnswer>(Layout layout, UnitWriter write, out Problem? fault, CancellationToken cancel) where TAnswer : class;

/// <summary>A call that takes a layout document as its body and answers from it alone: its query, body, time and faults.</summary>
internal static class LayoutCall
{
    /// <summary>Reads the request, works and writes answer or fault.</summary>
    /// <param name="context">The request.</param>
    /// <param name="limits">Limits of the service.</param>
    /// <param name="options">What a document may hold on this call.</param>
    /// <param name="longest">Longest time on this call, from when the body has arrived.</param>
    /// <param name="work">What it works out.</param>
    /// <param name="writer">Writes its answer.</param>
    public static async Task AnswerAsync<TAnswer>(
        HttpContext context, ServiceLimits limits, LayoutReaderOptions options, TimeSpan longest, LayoutWork<TAnswer> work, Action<JsonText, TAnswer> writer)
        where TAnswer : class
    {
        var write = QueryUnits.Read(context.Request, out var fault);
        fault ??= JsonContentType.Fault(context.Request);
        if (fault is null)
        {
            using var body = await PooledBody.ReadAsync(context.Request, limits.BodyBytes, context.RequestAborted);
            fault = body is null ? Problems.TooLarge(limits) : null;
            if (body is not null && Answer(body.Bytes, options, longest, write, work, out fault, context.RequestAborted) is { } answer)
            {
                await AnswerWriter.WriteAsync(context, answer, writer);
                return;
            }
        }
        await ProblemWriter.WriteAsync(context, fault!);
    }

    static TAnswer? Answer<TAnswer>(
        ReadOnlyMemory<byte> body, LayoutReaderOptions options, TimeSpan longest, UnitWriter write, LayoutWork<TAnswer> work, out Problem? fault, CancellationToken gone)
        where TAnswer : class
    {
        using var time = CancellationTokenSource.CreateLinkedTokenSource(gone);
        time.CancelAfter(longest);
        try
        {
            return LayoutBody.Read(body, options, out fault, time.Token) is { } layout ? work(layout, write, out fault, time.Token) : null;
        }
        catch (OperationCanceledException) when (!gone.IsCancellationRequested)
        {
            fault = Problems.TooSlow(longest);
        }
        catch (NotFiniteException notFinite)
        {
            fault = Problems.NoAnswer(notFinite.Message);
        }
        return null;
    }
}

using FlowCalc.Api.Answers;
using FlowCalc.Api.Hosting;
using FlowCalc.Layouts;
using FlowCalc.Studies;

namespace FlowCalc.Api.Requests;

/// <summary>A call whose body is a layout document.</summary>
internal static class LayoutCall
{
    /// <summary>Reads the layout, works and writes answer or fault.</summary>
    /// <param name="context">The request.</param>
    /// <param name="limits">Limits of the service.</param>
    /// <param name="options">What a document may hold on this call.</param>
    /// <param name="longest">Longest time on this call, from when its work begins.</param>
    /// <param name="work">What it works out.</param>
    /// <param name="writer">Writes its answer.</param>
    /// <param name="explained">What it works out where the query asks for an explanation; null for a call that has none.</param>
    /// <param name="others">Names of the query that the call has read itself.</param>
    public static Task AnswerAsync<TAnswer>(
        HttpContext context, ServiceLimits limits, LayoutReaderOptions options, TimeSpan longest, DocumentWork<Layout, TAnswer> work, Action<JsonText, TAnswer> writer,
        ExplainedWork<Layout, TAnswer>? explained = null, params string[] others)
        where TAnswer : class =>
        DocumentCall.AnswerAsync(context, limits, longest, Reader(options), work, writer, explained, others);

    /// <summary>The same for an answer that is no JSON.</summary>
    /// <param name="context">The request.</param>
    /// <param name="limits">Limits of the service.</param>
    /// <param name="options">What a document may hold on this call.</param>
    /// <param name="longest">Longest time on this call, from when its work begins.</param>
    /// <param name="work">What it works out.</param>
    /// <param name="make">Makes the text of its answer.</param>
    /// <param name="others">Names of the query that the call has read itself.</param>
    public static Task AnswerAsync<TAnswer>(
        HttpContext context, ServiceLimits limits, LayoutReaderOptions options, TimeSpan longest, DocumentWork<Layout, TAnswer> work, AnswerMaker<TAnswer> make, params string[] others)
        where TAnswer : class =>
        DocumentCall.AnswerAsync(context, limits, longest, Reader(options), work, make, null, others);

    /// <summary>Reads a layout.</summary>
    /// <param name="options">What a document may hold.</param>
    public static BodyReader<Layout> Reader(LayoutReaderOptions options) => (utf8, cancel) =>
    {
        var reading = LayoutReader.Read(utf8, options, cancel);
        return new StudyReading<Layout>(reading.Layout, reading.Faults);
    };
}

using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Explanations;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Requests;
using FlowCalc.Explanations;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Routes;

namespace FlowCalc.Api.CutLists;

/// <summary><c>POST /v1/cut-list</c>: what is cut, bent, clipped and ordered to build a layout; as JSON, or as tables for a spreadsheet.</summary>
internal static class CutListEndpoint
{
    /// <summary>Names of the query.</summary>
    public const string Format = "format", Part = "part";

    const string Csv = "text/csv; charset=utf-8";

    /// <summary>The words that each may have; the first is taken where it is left out.</summary>
    public static readonly string[] Formats = ["json", "csv"], Parts = ["pieces", "order"];

    /// <summary>Puts the call on the service.</summary>
    public static void MapCutList(this IEndpointRouteBuilder app) =>
        app.MapPost("/v1/cut-list", AnswerAsync)
            .WithName("CutList").WithTags("Flow")
            .WithSummary("Cut list of a layout")
            .DescribeCutList();

    static Task AnswerAsync(HttpContext context, ServiceLimits limits)
    {
        Problem? fault = null;
        var isCsv = QueryChoice.Read(context.Request, Format, Formats, ref fault) == 1;
        var part = QueryChoice.Read(context.Request, Part, Parts, ref fault);
        if (fault is null && isCsv && context.Request.Query.ContainsKey(LayoutQuery.Explain)) fault = Problems.Query(LayoutQuery.Explain, "It is of format=json; a table has no place for it.");
        if (fault is null && !isCsv && context.Request.Query.ContainsKey(Part)) fault = Problems.Query(Part, "It chooses a table of format=csv; JSON holds both.");
        if (fault is not null) return ProblemWriter.WriteAsync(context, fault);

        var options = new LayoutReaderOptions { MaximumPoints = limits.CutListPoints };
        if (!isCsv)
            return LayoutCall.AnswerAsync<CutListAnswer>(
                context, limits, options, limits.CutListTime, Json, static (text, answer) => text.Value(answer, AnswerJson.Default.CutListAnswer),
                new(Explained, CutListExplainer.Parts, "runs, bends, fittings, clips and hot places"), Format, Part);
        return LayoutCall.AnswerAsync<byte[]>(context, limits, options, limits.CutListTime, Table, AnswerWriter.Bytes(context, Csv), Format, Part);

        CutListAnswer? Json(Layout layout, UnitWriter write, out Problem? why, CancellationToken cancel) =>
            Work(layout, write, limits, out why, cancel) is { } work ? CutListAnswers.Of(layout, work.List, work.Judgement, write) : null;

        CutListAnswer? Explained(Layout layout, UnitWriter write, out Problem? why, CancellationToken cancel) =>
            Work(layout, write, limits, out why, cancel) is { } work
                ? CutListAnswers.Of(layout, work.List, work.Judgement, write) with { Explanation = ExplanationAnswers.Of(CutListExplainer.Of(layout, work.List, cancel), write) }
                : null;

        byte[]? Table(Layout layout, UnitWriter write, out Problem? why, CancellationToken cancel)
        {
            if (Work(layout, write, limits, out why, cancel) is not { } work) return null;
            var lengths = new CsvLengths(write.System);
            if (part == 1) return OrderTable.Write(work, lengths);
            if (PieceTable.Fields(work.List) <= PieceTable.MostFields) return PieceTable.Write(work, lengths);
            why = Problems.TooMuch($"The table would have over {PieceTable.MostFields} fields, as every piece has columns for as many bends as the one with the most; format=json has no such bound.");
            return null;
        }
    }

    static CutListWork? Work(Layout layout, UnitWriter write, ServiceLimits limits, out Problem? fault, CancellationToken cancel)
    {
        fault = null;
        var parts = CutListExplainer.Parts(layout);
        if (parts > limits.CutListParts)
        {
            fault = Problems.TooMuch($"Its runs, bends, fittings, clips and hot places are {parts} together; this call takes {limits.CutListParts}.");
            return null;
        }
        var list = CutList.Of(layout, cancel);
        return new CutListWork(layout, list, CutListFindings.Judge(layout, list, write.System, cancel));
    }
}

using System.Text;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Requests;
using FlowCalc.Exchange;
using FlowCalc.Flows;
using FlowCalc.Layouts;

namespace FlowCalc.Api.Exchange;

/// <summary><c>POST /v1/exchange</c>: a layout for another program, and our own answer to hold against that program's.</summary>
internal static class ExchangeEndpoint
{
    /// <summary>Name of the query.</summary>
    public const string Format = "format";

    /// <summary>What is answered.</summary>
    public const string Text = "text/plain", Csv = "text/csv";

    /// <summary>The words that it may have; the first is taken where it is left out.</summary>
    public static readonly string[] Formats = ["inp", "csv"];

    /// <summary>Puts the call on the service.</summary>
    public static void MapExchange(this IEndpointRouteBuilder app) =>
        app.MapPost("/v1/exchange", AnswerAsync)
            .WithName("Exchange").WithTags("Flow")
            .WithSummary("A layout as an EPANET input file, and its flow as a table")
            .DescribeExchange();

    static Task AnswerAsync(HttpContext context, ServiceLimits limits)
    {
        Problem? fault = null;
        var isTable = QueryChoice.Read(context.Request, Format, Formats, ref fault) == 1;
        if (!isTable && context.Request.Query.ContainsKey(QueryUnits.Name)) fault = Problems.Together(fault, Problems.Query(QueryUnits.Name, "It is of format=csv; a file of format=inp has the units of its own kind."));
        if (fault is not null) return ProblemWriter.WriteAsync(context, fault);
        var options = new LayoutReaderOptions { MaximumPoints = limits.Points };
        return LayoutCall.AnswerAsync<byte[]>(context, limits, options, limits.FlowTime, Work, AnswerWriter.Bytes(context, (isTable ? Csv : Text) + "; charset=utf-8"), Format);

        byte[]? Work(Layout layout, UnitWriter write, out Problem? why, CancellationToken cancel)
        {
            var flow = SteadyFlow.Solve(layout, cancel);
            why = flow.Report.Converged ? null : Problems.NoAnswer(flow.Report.Failure ?? "The solve did not converge.");
            if (why is not null) return null;
            if (isTable) return FlowTable.Write(layout, flow, write);
            why = EpanetInput.Refusal(layout, flow) is { } refusal ? Problems.NotWritten(refusal) : null;
            return why is null ? Encoding.UTF8.GetBytes(EpanetInput.Write(layout, flow)) : null;
        }
    }
}

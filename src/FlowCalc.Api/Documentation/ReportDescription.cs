using FlowCalc.Api.Hosting;
using FlowCalc.Api.Reports;
using FlowCalc.Api.Requests;
using FlowCalc.Api.Upkeep;
using Microsoft.OpenApi;

namespace FlowCalc.Api.Documentation;

/// <summary>What the contract says of <c>POST /v1/report</c>.</summary>
internal static class ReportDescription
{
    /// <summary>Describes the call.</summary>
    public static void DescribeReport(this RouteHandlerBuilder call) => call
        .Produces<string>(200, ReportEndpoint.Html, ReportEndpoint.Pdf)
        .ProducesFaults(400, 413, 415, 422, 429)
        .AddOpenApiOperationTransformer((operation, context, _) =>
        {
            var limits = context.ApplicationServices.GetRequiredService<ServiceLimits>();
            CallDescriptions.DescribeLayoutCall(operation, FormattableString.Invariant(
                $"""
                Takes a layout document and answers a report to print and to keep with the papers of what is built: verdict, drawing, every input and assumption, the flow by nozzle, the discharge by case with charts, findings with their cures, the cut list with bend marks and the order, mount, firing circuit and dates where the document has them, the equations used with their sources, cautions, what is not covered, and places to sign. A layout whose supply is held at a pressure has no discharge in its report. It approves nothing.

                As HTML it is one page that needs nothing else and runs no script; it prints on the paper asked for. As PDF its text can be searched and copied and its fonts are in it. The same request gives the same bytes: a report bears no other date than the one asked for.

                Limits: a body of at most {limits.BodyBytes} bytes, at most {limits.ReportPoints} points, at most {limits.ReportParts} runs, bends, fittings, clips, hot places and zones together, and {limits.ReportTime.TotalSeconds} s from when its work begins. {CallDescriptions.NoReplacement}
                """));
            CallDescriptions.AddChoice(operation, ReportEndpoint.Format, ReportEndpoint.Formats, "How to write the report.");
            CallDescriptions.AddChoice(operation, ReportEndpoint.Paper, ReportEndpoint.Papers, "The paper that it is for.");
            AddText(operation, ReportEndpoint.Date, "2026-03-14", "The date that the report bears, as it is to stand there; a blank to fill in where left out. The clock of the service is not looked at.");
            AddText(operation, ReportEndpoint.By, "A. Planner", "Who prepared it, as it is to stand there; a blank to fill in where left out.");
            CallDescriptions.AddText(operation, UpkeepQuery.TodayName, "2026-11-25", "The day for which dates of the bottle's service are judged, ISO 8601; without it the report leaves them out.", isRequired: false);
            CallDescriptions.SetExample(operation, "200", ReportEndpoint.Html, "<!DOCTYPE html><html lang=\"en\">…</html>", "The report.");
            if (operation.Responses?.GetValueOrDefault("200")?.Content?.TryGetValue(ReportEndpoint.Pdf, out var file) == true)
                (file.Schema, file.Example) = (new OpenApiSchema { Type = JsonSchemaType.String, Format = "binary" }, "%PDF-1.7 …");
            return Task.CompletedTask;
        });

    static void AddText(OpenApiOperation operation, string name, string example, string description) => operation.Parameters!.Add(new OpenApiParameter
    {
        Name = name,
        In = ParameterLocation.Query,
        Description = description,
        Schema = new OpenApiSchema { Type = JsonSchemaType.String, MinLength = 1, MaxLength = QueryText.Longest },
        Example = example,
    });
}

using System.Text.Json.Nodes;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Jobs;
using FlowCalc.Api.Tolerance;
using Microsoft.OpenApi;

namespace FlowCalc.Api.Documentation;

/// <summary>What the contract says of jobs, and of calls that may become one.</summary>
internal static class JobDescriptions
{
    const string Id = "00112233445566778899aabbccddeeff";

    /// <summary>Describes <c>POST /v1/tolerance</c>.</summary>
    public static void DescribeTolerance(this RouteHandlerBuilder call) => call
        .Produces<ToleranceAnswer>(200, CallDescriptions.Json)
        .Produces<JobAnswer>(202, CallDescriptions.Json)
        .ProducesFaults(400, 413, 415, 422, 429, 503)
        .AddOpenApiOperationTransformer((operation, context, _) =>
        {
            var limits = context.ApplicationServices.GetRequiredService<ServiceLimits>();
            CallDescriptions.DescribeBody(operation, FormattableString.Invariant(
                $"""
                Takes a layout document and how far what is in it may be off, works the layout out once a sample with values drawn from those spreads, and answers how flow or discharge turn out: percentiles of every figure, the chance of every finding and verdict, and which input matters most. Samples that have no answer are counted and told.

                `spreads` goes by kind (`bore`, `roughness`, `length`, `kFactor`, `chargePressure`, `fill`, `temperature`), for every thing of the kind by itself, or by path (`tubes/trunk/bore`, `runs/R11/length`, `points/N3/kFactor`, `supply/bottle/chargePressure`); what is said of one thing stands before what is said of its kind. A bore and a roughness are one for all runs of a size of tube, since it comes off one coil. A spread is `normal` (a standard deviation, cut at four), `uniform` or `triangular` (half the width, or both ends): a bare number is a part of the value, `0.02`; of a pressure, of the gauge pressure; a size with its unit is a difference, `"0.1 mm"`; of a temperature in K; `["13 bar", "14.5 bar"]` are both ends. Left out, the usual spreads are taken and listed. A spread that leaves what is possible is refused, never cut.

                A caller who does not want to wait sends `Prefer: respond-async` (RFC 7240): the answer is 202 with the job in `Location`.

                Limits: a body of at most {limits.BodyBytes} bytes, at most {limits.DischargePoints} points, {limits.ToleranceFlowSamples} samples of a flow or {limits.ToleranceDischargeSamples} of a discharge, {limits.ToleranceNumbers} figures of all samples together, and {limits.ToleranceTime.TotalSeconds} s from when its work begins; as a job {limits.JobTime.TotalSeconds} s; with `explain=true` at most {limits.ExplainedPoints} points times cases. {CallDescriptions.NoReplacement}
                """), "A layout and its spreads, UTF-8. Unknown fields and repeated names are faults.", ContractExamples.Request("tolerance"));
            CallDescriptions.AddExplain(operation, "the steady flow of the design, and how percentiles, chances and indices of the inputs come about: equations with their numbers in place and their sources, not every sample");
            operation.Parameters!.Add(new OpenApiParameter
            {
                Name = "Prefer",
                In = ParameterLocation.Header,
                Description = "`respond-async` for a job instead of an answer.",
                Schema = new OpenApiSchema { Type = JsonSchemaType.String },
                Example = "respond-async",
            });
            CallDescriptions.SetExample(operation, "200", CallDescriptions.Json, ContractExamples.Answer("tolerance"), "The spread; the example shows the first two entries of every list.");
            CallDescriptions.SetExample(operation, "202", CallDescriptions.Json, Example("queued", 0), "The job, which is found at `Location`.");
            if (operation.Responses?.GetValueOrDefault("202") is OpenApiResponse accepted)
                accepted.Headers = new Dictionary<string, IOpenApiHeader>
                {
                    ["Location"] = new OpenApiHeader { Description = "Path of the job.", Schema = new OpenApiSchema { Type = JsonSchemaType.String } },
                    ["Preference-Applied"] = new OpenApiHeader { Description = "`respond-async`.", Schema = new OpenApiSchema { Type = JsonSchemaType.String } },
                };
            return Task.CompletedTask;
        });

    /// <summary>Describes <c>GET /v1/jobs/{id}</c>.</summary>
    public static void DescribeJob(this RouteHandlerBuilder call) => call
        .Produces<JobAnswer>(200, CallDescriptions.Json)
        .ProducesFaults(404, 422, 429)
        .AddOpenApiOperationTransformer((operation, context, _) =>
        {
            var limits = context.ApplicationServices.GetRequiredService<ServiceLimits>();
            Describe(operation, FormattableString.Invariant(
                $"State and progress of a job, and once it is done the answer of its call, or why there is none. A job runs for at most {limits.JobTime.TotalSeconds} s; {limits.JobsRunning} run at once and {limits.JobsWaiting} wait. One that has ended is kept for {limits.JobKept.TotalSeconds} s, and while no more than {limits.JobsKept}, or {limits.JobBytes} bytes of answers, have come after it. Jobs live in the copy of the service that took them and end with it."));
            CallDescriptions.SetExample(operation, "200", CallDescriptions.Json, Example("running", 320), "The job.");
            return Task.CompletedTask;
        });

    /// <summary>Describes <c>DELETE /v1/jobs/{id}</c>.</summary>
    public static void DescribeRemoval(this RouteHandlerBuilder call) => call
        .Produces(204)
        .ProducesFaults(404, 422, 429)
        .AddOpenApiOperationTransformer((operation, _, _) =>
        {
            Describe(operation, "Stops a job that waits or runs; it then says that it was cancelled. Forgets a job that has ended, and its answer.");
            CallDescriptions.SetExample(operation, "204", CallDescriptions.Json, null, "Done.");
            return Task.CompletedTask;
        });

    /// <summary>Describes <c>GET /v1/jobs/{id}/events</c>.</summary>
    public static void DescribeEvents(this RouteHandlerBuilder call) => call
        .Produces<string>(200, "text/event-stream")
        .ProducesFaults(404, 422, 429)
        .AddOpenApiOperationTransformer((operation, _, _) =>
        {
            Describe(operation, FormattableString.Invariant(
                $"Server-sent events: `progress` whenever more is done, with `{{ \"state\", \"done\", \"of\" }}`, and at the end one named `done`, `failed` or `cancelled`, after which the stream closes. At most {JobEvents.MostListeners} callers listen to one job."));
            CallDescriptions.SetExample(operation, "200", "text/event-stream", JsonValue.Create("event: progress\ndata: {\"state\":\"running\",\"done\":320,\"of\":1000}\n\nevent: done\ndata: {\"state\":\"done\",\"done\":1000,\"of\":1000}\n\n"), "The events.");
            return Task.CompletedTask;
        });

    static void Describe(OpenApiOperation operation, string description)
    {
        operation.Description = description;
        if (operation.Parameters?.FirstOrDefault(known => known.Name == "id") is OpenApiParameter id)
            (id.Description, id.Example) = ("The job's id, from `Location`.", Id);
    }

    static JsonObject Example(string state, int done) => new()
    {
        ["id"] = Id,
        ["call"] = "/v1/tolerance",
        ["state"] = state,
        ["done"] = done,
        ["of"] = 1_000,
        ["keptUntil"] = null,
        ["problem"] = null,
        ["answer"] = null,
    };
}

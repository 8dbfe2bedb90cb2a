using System.Text.Json.Nodes;
using FlowCalc.Api.Catalogue;
using FlowCalc.Api.CutLists;
using FlowCalc.Api.Discharge;
using FlowCalc.Api.Drawing;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Flow;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Requests;
using Microsoft.OpenApi;

namespace FlowCalc.Api.Documentation;

/// <summary>What the contract says of each call beyond its name and its summary.</summary>
internal static class CallDescriptions
{
    public const string Json = "application/json";

    const string Csv = "text/csv";


    const string CsvExample = "kind,name,count,size_mm,length_mm,note\r\nclip,8 mm,12,8,,lined and of metal; over a sleeve a size larger\r\n";

    public const string NoReplacement = "The answer replaces neither the maker's instructions nor the rules that apply, licensed practice or a discharge test.";

    /// <summary>Describes <c>POST /v1/flow</c>.</summary>
    public static void DescribeFlow(this RouteHandlerBuilder call) => call
        .Produces<FlowAnswer>(200, Json)
        .ProducesFaults(400, 413, 415, 422, 429)
        .AddOpenApiOperationTransformer((operation, context, _) =>
        {
            var limits = context.ApplicationServices.GetRequiredService<ServiceLimits>();
            DescribeLayoutCall(operation, FormattableString.Invariant(
                $"""
                Takes a layout document and answers one instant of it: pressure, flow and share at every nozzle and every run, where the pressure is lost, and what there is to say about it. A bottle is taken at its pressure at `temperature`. Of an agent that boils, `band` says how far what the model leaves open moves it.

                Limits: a body of at most {limits.BodyBytes} bytes, at most {limits.Points} points, and {limits.FlowTime.TotalSeconds} s from when its work begins; with `explain=true` at most {limits.ExplainedPoints} points. {NoReplacement}
                """));
            AddExplain(operation, "the equations of every run, point and nozzle with their numbers in place and their sources, and their sums down every way");
            SetExamples(operation, "The steady flow.", ContractExamples.Answer("flow"), ContractExamples.Answer("flow-explained"));
            return Task.CompletedTask;
        });

    /// <summary>Describes <c>POST /v1/discharge</c>.</summary>
    public static void DescribeDischarge(this RouteHandlerBuilder call) => call
        .Produces<DischargeAnswer>(200, Json)
        .ProducesFaults(400, 413, 415, 422, 429)
        .AddOpenApiOperationTransformer((operation, context, _) =>
        {
            var limits = context.ApplicationServices.GetRequiredService<ServiceLimits>();
            DescribeLayoutCall(operation, FormattableString.Invariant(
                $"""
                Takes a layout document whose supply is a bottle and follows its discharge from the opening valve to the empty bottle, at every temperature and in every attitude of `cases`: when each nozzle starts, what it gives through time, how long it lasts and what stays behind; of liquids, gases and liquefied gases. A case that has no discharge, such as one below the agent's freezing point, says why and leaves the others theirs.

                Limits: a body of at most {limits.BodyBytes} bytes, at most {limits.DischargePoints} points, and {limits.DischargeTime.TotalSeconds} s from when its work begins; with `explain=true` at most {limits.ExplainedPoints} points times cases. {NoReplacement}
                """));
            AddExplain(operation, "of each case the state at its start, the flow of the filled line at that pressure, and how fast the bottle changes then: equations with their numbers in place and their sources, not every step of time");
            SetExamples(operation, "The discharge; the examples show the first two entries of every list.", ContractExamples.Answer("discharge"), ContractExamples.Answer("discharge-explained"));
            return Task.CompletedTask;
        });

    /// <summary>Describes <c>POST /v1/cut-list</c>.</summary>
    public static void DescribeCutList(this RouteHandlerBuilder call) => call
        .Produces<CutListAnswer>(200, Json, Csv)
        .ProducesFaults(400, 413, 415, 422, 429)
        .AddOpenApiOperationTransformer((operation, context, _) =>
        {
            var limits = context.ApplicationServices.GetRequiredService<ServiceLimits>();
            DescribeLayoutCall(operation, FormattableString.Invariant(
                $"""
                Takes a layout document and answers what is cut, bent, clipped, sleeved and ordered to build it: every piece of tube with its cut length, its bend marks from one end and the turns between bend planes; clips with their places; the pieces packed into the document's stock; fittings, nozzles and tube counted. `cutting` in the document says how the bench works; what it leaves open is listed among the assumptions. No flow is solved. A run given by its length has no places for its bends, so it gets its length and no marks.

                As CSV (RFC 4180) the table `pieces` has one row a piece, its marks in columns of their own, and `order` one row a tube, bar, fitting, nozzle, clip and sleeve, then the findings and cautions. Lengths there are in mm, in or m by `units`, as the columns say, to a hundredth of a millimetre; text that a spreadsheet would take for a formula has an apostrophe before it; a table that is not plain ASCII starts with a byte order mark.

                Limits: a body of at most {limits.BodyBytes} bytes, at most {limits.CutListPoints} points, at most {limits.CutListParts} runs, bends, fittings, clips and hot places together, and {limits.CutListTime.TotalSeconds} s from when its work begins; with `explain=true` at most {limits.ExplainedPoints} of these parts. {NoReplacement}
                """));
            AddChoice(operation, CutListEndpoint.Format, CutListEndpoint.Formats, "How to write the answer.");
            AddChoice(operation, CutListEndpoint.Part, CutListEndpoint.Parts, "Which table, of `format=csv` alone.");
            AddExplain(operation, "of each run its legs, turns, setbacks, arcs, allowances, marks and clips, of each tube what is ordered, how it is packed and below which no packing goes: equations with their numbers in place and their sources; of `format=json` alone");
            SetExample(operation, "200", Json, ContractExamples.Answer("cutlist"), "The cut list; the example shows the first two entries of every list.");
            if (operation.Responses?.GetValueOrDefault("200")?.Content?.TryGetValue(Csv, out var table) == true)
                (table.Schema, table.Example) = (new OpenApiSchema { Type = JsonSchemaType.String }, CsvExample);
            return Task.CompletedTask;
        });

    /// <summary>Describes <c>POST /v1/drawing</c>.</summary>
    public static void DescribeDrawing(this RouteHandlerBuilder call) => call
        .Produces<string>(200, DrawingEndpoint.Svg)
        .ProducesFaults(400, 413, 415, 422, 429)
        .AddOpenApiOperationTransformer((operation, context, _) =>
        {
            var limits = context.ApplicationServices.GetRequiredService<ServiceLimits>();
            DescribeLayoutCall(operation, FormattableString.Invariant(
                $"""
                Takes a layout document and draws it as SVG: tubes in width by bore and in colour and dashes by what `colour` says of the steady flow, names and numbers beside points and runs, a mark at every place that a finding concerns, a legend, and the cautions. `view=isometric` draws it in space, to scale, and needs a place of every point; `tree` draws it from the supply to the nozzles without places. `auto` is isometric where every point has a place. A name that is too long ends in an ellipsis; its tip has it in full.

                With `colour=none` the layout is drawn alone: no flow is solved, so that a layout whose flow is not found, which is else a 422 as on `/v1/flow`, can be drawn too.

                Limits: a body of at most {limits.BodyBytes} bytes, at most {limits.DrawingPoints} points, at most {limits.DrawingParts} runs, corners and fittings together, and {limits.DrawingTime.TotalSeconds} s from when its work begins. {NoReplacement}
                """));
            AddChoice(operation, DrawingEndpoint.View, DrawingEndpoint.Views, "How the layout is laid on the sheet.");
            AddChoice(operation, DrawingEndpoint.Colour, DrawingEndpoint.Colours, "What colours and dashes tell: the flow of each run and nozzle, the pressure at the end of each, the part of the whole flow in each run and each nozzle's deviation from its wanted share, or nothing.");
            SetExample(operation, "200", DrawingEndpoint.Svg, null, "The drawing, an SVG document that stands alone: it loads nothing and runs nothing.");
            if (operation.Responses?.GetValueOrDefault("200")?.Content?.TryGetValue(DrawingEndpoint.Svg, out var drawing) == true)
                (drawing.Schema, drawing.Example) = (new OpenApiSchema { Type = JsonSchemaType.String }, "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 640 400\" width=\"640\" height=\"400\">…</svg>");
            return Task.CompletedTask;
        });

    /// <summary>Describes a call that reads the catalogue.</summary>
    public static void DescribeRead<TAnswer>(this RouteHandlerBuilder call, bool takesUnits, PathParameter? named = null, bool isChart = false) => call
        .Produces<TAnswer>(200, Json)
        .ProducesFaults(named is null ? [422, 429] : [404, 422, 429])
        .AddOpenApiOperationTransformer((operation, _, _) =>
        {
            if (takesUnits)
                AddUnits(operation);
            if (isChart)
                AddChart(operation);
            if (named is not null && operation.Parameters?.FirstOrDefault(known => known.Name == named.Name) is OpenApiParameter parameter)
                (parameter.Description, parameter.Example) = (named.Description, named.Example);
            var example = typeof(TAnswer) == typeof(LayoutDocument) ? ContractExamples.Demo() : ContractExamples.Answer(operation.OperationId!.ToLowerInvariant());
            SetExample(operation, "200", Json, example, "What was asked for.");
            return Task.CompletedTask;
        });

    /// <summary>Describes <c>GET /v1/layout-schema</c>.</summary>
    public static void DescribeSchema(this RouteHandlerBuilder call) => call
        .Produces<object>(200, "application/schema+json")
        .ProducesFaults(422, 429)
        .AddOpenApiOperationTransformer((operation, _, _) =>
        {
            SetExample(operation, "200", "application/schema+json", new JsonObject { ["$schema"] = "https://json-schema.org/draft/2020-12/schema", ["type"] = "object" }, "The schema; the example shows its first lines.");
            return Task.CompletedTask;
        });

    /// <summary>Describes a call on the health of the service.</summary>
    public static void DescribeHealth(this RouteHandlerBuilder call, string status, bool canFail)
    {
        call.Produces<HealthAnswer>(200, Json);
        if (canFail)
            call.Produces<HealthAnswer>(503, Json);
        call.AddOpenApiOperationTransformer((operation, _, _) =>
        {
            SetExample(operation, "200", Json, new JsonObject { ["status"] = status }, "It is.");
            SetExample(operation, "503", Json, new JsonObject { ["status"] = "starting" }, "Not yet.");
            return Task.CompletedTask;
        });
    }

    /// <summary>Lists the faults of a call; that of a missing key, which any call but those on health may have, is among them by itself.</summary>
    public static RouteHandlerBuilder ProducesFaults(this RouteHandlerBuilder call, params int[] statuses)
    {
        // Whatever takes a body may get it late, and what nobody foresaw may happen in any work.
        int[] always = statuses.Contains(StatusCodes.Status413PayloadTooLarge) ? [StatusCodes.Status401Unauthorized, StatusCodes.Status408RequestTimeout, StatusCodes.Status500InternalServerError] : [StatusCodes.Status401Unauthorized];
        int[] all = [.. statuses.Concat(always).Order()];
        foreach (var status in all)
            call.Produces<Problem>(status, ProblemWriter.ContentType);
        return call.AddOpenApiOperationTransformer((operation, context, _) =>
        {
            var limits = context.ApplicationServices.GetRequiredService<ServiceLimits>();
            foreach (var status in all)
                FaultExamples.Show(operation, status, limits);
            operation.AskKey(context.Document);
            return Task.CompletedTask;
        });
    }

    public static void DescribeLayoutCall(OpenApiOperation operation, string description) => DescribeBody(
        operation, description, "A layout document, UTF-8, whose JSON Schema is also at `/v1/layout-schema`. Unknown fields and repeated names are faults.", ContractExamples.Demo());

    public static void DescribeBody(OpenApiOperation operation, string description, string body, JsonNode example)
    {
        operation.Description = description;
        operation.RequestBody = new OpenApiRequestBody
        {
            Description = body,
            Required = true,
            Content = new Dictionary<string, OpenApiMediaType> { [Json] = new() { Example = example } },
        };
        AddUnits(operation);
    }

    static void AddUnits(OpenApiOperation operation)
    {
        operation.Parameters ??= [];
        operation.Parameters.Add(new OpenApiParameter
        {
            Name = QueryUnits.Name,
            In = ParameterLocation.Query,
            Description = "The units of the answer: `metric` (bar, L/min, kg/s, kg, m, °C), `us` (psi, US gal/min, lb/s, lb, ft, °F) or `si` (Pa, m3/s, kg/s, kg, m, K); times are in s in each.",
            Schema = new OpenApiSchema { Type = JsonSchemaType.String, Enum = ["metric", "us", "si"], Default = "metric" },
            Example = "metric",
        });
    }

    public static void AddExplain(OpenApiOperation operation, string what) => operation.Parameters!.Add(new OpenApiParameter
    {
        Name = LayoutQuery.Explain,
        In = ParameterLocation.Query,
        Description = $"`true` for an answer with `explanation`: {what}, so that it can be done again by hand. Numbers are in the units of the answer, the forms of the equations and the worked lines in SI.",
        Schema = new OpenApiSchema { Type = JsonSchemaType.Boolean, Default = false },
        Example = false,
    });

    static void SetExamples(OpenApiOperation operation, string description, JsonNode? plain, JsonNode? explained)
    {
        SetExample(operation, "200", Json, null, description);
        if (operation.Responses?.GetValueOrDefault("200") is OpenApiResponse response && response.Content?.TryGetValue(Json, out var media) == true)
            media.Examples = new Dictionary<string, IOpenApiExample>
            {
                ["answer"] = new OpenApiExample { Summary = "The answer to the layout shown", Value = plain },
                ["explained"] = new OpenApiExample { Summary = "With explain=true, of a small layout, long lists by their first entries", Value = explained },
            };
    }

    public static void AddChoice(OpenApiOperation operation, string name, string[] words, string description) =>
        operation.Parameters!.Add(new OpenApiParameter
        {
            Name = name,
            In = ParameterLocation.Query,
            Description = description,
            Schema = new OpenApiSchema { Type = JsonSchemaType.String, Enum = [.. words.Select(word => JsonValue.Create(word))], Default = words[0] },
            Example = words[0],
        });

    public static void AddText(OpenApiOperation operation, string name, string example, string description, bool isRequired) =>
        operation.Parameters!.Add(new OpenApiParameter
        {
            Name = name,
            In = ParameterLocation.Query,
            Required = isRequired,
            Description = description,
            Schema = new OpenApiSchema { Type = JsonSchemaType.String },
            Example = example,
        });

    static void AddChart(OpenApiOperation operation)
    {
        foreach (var (name, example, description) in (ReadOnlySpan<(string, string, string)>)[
            (ChartAsk.FillName, "1000 kg/m3", "Fill density of the chart's bottle, with its unit; the usual one where left out. A gas takes none."),
            (ChartAsk.PressureName, "42 bar", "Pressure to which the chart's bottle was charged, with its unit; 200 bar of a gas, 25 bar of nitrogen over an agent where left out. A gas that is liquefied alone takes none."),
            (ChartAsk.TemperatureName, "20 °C", "Temperature at which it was charged; 20 °C where left out.")])
            operation.Parameters!.Add(new OpenApiParameter
            {
                Name = name,
                In = ParameterLocation.Query,
                Description = description,
                Schema = new OpenApiSchema { Type = JsonSchemaType.String },
                Example = example,
            });
    }

    public static void SetExample(OpenApiOperation operation, string status, string contentType, JsonNode? example, string description)
    {
        if (operation.Responses?.GetValueOrDefault(status) is not OpenApiResponse response)
            return;
        response.Description = description;
        if (response.Content?.TryGetValue(contentType, out var media) == true)
            media.Example = example;
    }
}

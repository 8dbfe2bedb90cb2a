using System.Text.Json;
using System.Text.Json.Nodes;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Calibration;
using FlowCalc.Api.Circuits;
using FlowCalc.Api.Coverage;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Tolerance;
using FlowCalc.Api.Upkeep;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Studies.Reading;
using Microsoft.OpenApi;

namespace FlowCalc.Api.Documentation;

/// <summary>The faults that the contract shows, made by the code that makes the real ones.</summary>
internal static class FaultExamples
{
    static ReadOnlyMemory<byte> WrongLayout => """
        { "format": 1, "agent": "water", "supply": { "pressure": "12" },
          "points": [ { "id": "S", "kind": "supply" }, { "id": "cab", "kind": "nozzle", "kFactor": "2 L/min/bar^0.5" } ],
          "runs": [ { "from": "S", "to": "caab", "bore": "6,0 mm", "length": "2 m" } ] }
        """u8.ToArray();

    /// <summary>Describes one fault of a call, with examples.</summary>
    public static void Show(OpenApiOperation operation, int status, ServiceLimits limits)
    {
        if (operation.Responses?.GetValueOrDefault(Key(status)) is not OpenApiResponse response
            || response.Content?.TryGetValue(ProblemWriter.ContentType, out var media) != true)
            return;
        response.Description = Description(status);
        media!.Examples = Of(status, operation.OperationId, limits).ToDictionary(
            example => example.Name,
            IOpenApiExample (example) => new OpenApiExample { Summary = example.Summary, Value = Node(example.Problem) });
        if (status == StatusCodes.Status401Unauthorized)
            response.Headers = new Dictionary<string, IOpenApiHeader>
            {
                ["WWW-Authenticate"] = new OpenApiHeader { Description = "`Bearer` and `Basic`: the ways to send a key.", Schema = new OpenApiSchema { Type = JsonSchemaType.String } },
            };
        if (status == StatusCodes.Status429TooManyRequests)
            response.Headers = new Dictionary<string, IOpenApiHeader>
            {
                ["Retry-After"] = new OpenApiHeader { Description = "Seconds to wait before the next try.", Schema = new OpenApiSchema { Type = JsonSchemaType.Integer } },
            };
    }

    static IEnumerable<(string Name, string Summary, Problem Problem)> Of(int status, string? call, ServiceLimits limits)
    {
        return status switch
        {
            400 => [
                ("not-json", "Not JSON", Problems.NotJson("'}' is an invalid start of a value. (line 3, byte 14)")),
                ("empty", "An empty body", Problems.EmptyBody()),
                ("not-utf-8", "Not UTF-8", Problems.NotUtf8(120))],
            401 => [("no-key", "No key that opens the service", Problems.NoKey())],
            404 => [call?.Contains("Job", StringComparison.Ordinal) == true
                ? ("none", "No such job", Problems.NoJob("00112233445566778899aabbccddeeff"))
                : ("none", "Nothing of that name", Problems.NoSuch("agent", "watre", "/v1/agents"))],
            408 => [("late", "A body that took too long to arrive", Problems.TooLate(limits.BodyTime))],
            413 => [("too-large", "A body over the limit", Problems.TooLarge(limits))],
            415 => [
                ("wrong-type", "A content type that is not JSON", Problems.WrongType("text/plain")),
                ("encoded", "A body that is packed", Problems.Encoded("gzip"))],
            422 => [.. OfLayout(call, limits), ("query", "A query that does not fit", Problems.Query("units", "\"imperial\" is no system of units; those that fit are metric, us and si."))],
            429 => [("busy", "No place free", Problems.Busy(limits)), ("full", "No room for bodies and answers", Problems.NoRoom(limits)), ("too-often", "Too many requests", Problems.TooOften(limits))],
            500 => [("unforeseen", "What nobody foresaw", Problems.Unforeseen("4bf92f3577b34da6a3ce929d0e0e4736"))],
            503 => [("stopping", "A service that is shutting down", Problems.ShuttingDown())],
            _ => [],
        };
    }

    static IEnumerable<(string Name, string Summary, Problem Problem)> OfLayout(string? call, ServiceLimits limits)
    {
        var layout = ("layout", "A layout that makes no sense, every fault at once", Problems.Unread(LayoutReader.Read(WrongLayout, new LayoutReaderOptions { NeedsBottle = call == "Discharge", NeedsMount = call == "Mount" }).Faults));
        return call switch
        {
            "Flow" => [
                layout,
                ("no-answer", "A flow that was not found", Problems.NoAnswer("The solve did not converge.")),
                ("time", "Over the time limit", Problems.TooSlow(limits.FlowTime))],
            "CutList" => [
                layout,
                ("too-much", "More parts than one answer holds", Problems.TooMuch($"Its runs, bends, fittings, clips and hot places are {limits.CutListParts + 1L} together; this call takes {limits.CutListParts}.")),
                ("time", "Over the time limit", Problems.TooSlow(limits.CutListTime))],
            "Drawing" => [
                layout,
                ("no-answer", "A flow that was not found", Problems.NoAnswer("The solve did not converge. With colour=none the layout is drawn without a flow.")),
                ("too-much", "More parts than one drawing holds", Problems.TooMuch($"Its runs, corners and fittings are {limits.DrawingParts + 1L} together; this call takes {limits.DrawingParts}.")),
                ("time", "Over the time limit", Problems.TooSlow(limits.DrawingTime))],
            "Report" => [
                layout,
                ("no-answer", "A flow that was not found", Problems.NoAnswer("The solve did not converge.")),
                ("too-much", "More parts than a report holds", Problems.TooMuch($"Its runs, bends, fittings, clips, hot places and zones are {limits.ReportParts + 1L} together; this call takes {limits.ReportParts}.")),
                ("time", "Over the time limit", Problems.TooSlow(limits.ReportTime))],
            "Mount" => [
                layout,
                ("time", "Over the time limit", Problems.TooSlow(limits.MountTime))],
            "Circuit" => [
                layout,
                ("no-circuit", "A layout without a circuit", Problems.Unread([new LayoutFault("/circuit", CircuitEndpoint.Missing)])),
                ("time", "Over the time limit", Problems.TooSlow(limits.CircuitTime))],
            "Upkeep" => [
                layout,
                ("no-service", "A layout without a service", Problems.Unread([new LayoutFault("/service", UpkeepEndpoint.Missing)])),
                ("day", "No day is given", Problems.Query(UpkeepQuery.TodayName, "It is missing: today is the day for which the dates are judged, such as 2026-11-25.")),
                ("time", "Over the time limit", Problems.TooSlow(limits.UpkeepTime))],
            "Exchange" => [
                layout,
                ("no-answer", "A flow that was not found", Problems.NoAnswer("The solve did not converge.")),
                ("not-written", "An agent that the format does not know", Problems.NotWritten("Nitrogen is no liquid; the format knows liquids alone")),
                ("time", "Over the time limit", Problems.TooSlow(limits.FlowTime))],
            "Check" => [
                layout,
                ("too-much", "More parts than the call takes", Problems.TooMuch($"Its runs, bends, fittings, clips and hot places are {limits.CheckParts + 1L} together; this call takes {limits.CheckParts}.")),
                ("time", "Over the time limit", Problems.TooSlow(limits.CheckTime))],
            "Coverage" => [
                layout,
                ("no-coverage", "A layout without zones and coverage", Problems.Unread([new LayoutFault("/coverage", CoverageEndpoint.Missing)])),
                ("too-much", "More sprays and things than one answer holds", CoverageEndpoint.TooMany(limits.CoveragePairs + 1L, limits)),
                ("time", "Over the time limit", Problems.TooSlow(limits.CoverageTime))],
            "Calibrate" => [
                layout,
                ("no-test", "A layout without a test", Problems.Unread([new LayoutFault("/measured", CalibrationEndpoint.Missing)])),
                ("no-answer", "A test without a flow", Problems.NoAnswer("The test of the layout as drawn has no answer. The flow did not converge.")),
                ("time", "Over the time limit", Problems.TooSlow(limits.CalibrationTime))],
            "Discharge" => [
                layout,
                ("no-answer", "An answer that was not found", Problems.NoAnswer(new NotFiniteException(nameof(QuantityKind.Pressure)).Message)),
                ("time", "Over the time limit", Problems.TooSlow(limits.DischargeTime))],
            "Compare" => [
                ("comparison", "Variants that make no sense, every fault at once", Problems.Unread(CompareReader.Read(WrongComparison(), new LayoutReaderOptions(), limits.Variants, CancellationToken.None).Faults)),
                ("time", "Over the time limit", Problems.TooSlow(limits.CompareTime))],
            "Tolerance" => [
                ("study", "Spreads that make no sense, every fault at once", Problems.Unread(ToleranceReader.Read(WrongStudy(), new LayoutReaderOptions(), ToleranceEndpoint.LimitsOf(limits), CancellationToken.None).Faults)),
                ("time", "Over the time limit", Problems.TooSlow(limits.ToleranceTime))],
            "Size" => [
                ("sizing", "A stock and a wish that make no sense, every fault at once", Problems.Unread(SizeReader.Read(WrongSizing(), new LayoutReaderOptions(), limits.SizeStock, limits.SizeWork, CancellationToken.None).Faults)),
                ("no-answer", "A layout in which nothing flows", Problems.NoAnswer("The pressure in the bottle is not above the surroundings': nothing flows.")),
                ("time", "Over the time limit", Problems.TooSlow(limits.SizeTime))],
            _ => [],
        };
    }

    static byte[] WrongComparison()
    {
        var request = ContractExamples.Request("compare").AsObject();
        request["variants"] = new JsonArray(
            new JsonObject { ["name"] = "wider", ["set"] = new JsonObject { ["runs/R111/tube"] = "feed", ["runs/R11/tube"] = "fead" } },
            new JsonObject { ["name"] = "wider" });
        return JsonSerializer.SerializeToUtf8Bytes(request);
    }

    static byte[] WrongStudy()
    {
        var request = ContractExamples.Request("tolerance").AsObject();
        request["samples"] = 10;
        request["spreads"] = new JsonObject { ["runs/R111/length"] = new JsonObject { ["uniform"] = "10 mm" }, ["bore"] = new JsonObject { ["normal"] = -0.01 }, ["fill"] = new JsonObject { ["normal"] = 0.2 } };
        return JsonSerializer.SerializeToUtf8Bytes(request);
    }

    static byte[] WrongSizing()
    {
        var request = ContractExamples.Request("size").AsObject();
        request["stock"] = new JsonObject { ["tubes"] = new JsonArray("fead") };
        request["free"] = new JsonArray("R111", "driver");
        request["wish"] = new JsonObject { ["deviation"] = -0.1 };
        request["objective"] = "cheapest";
        return JsonSerializer.SerializeToUtf8Bytes(request);
    }

    static string Description(int status) => status switch
    {
        400 => "The body is not JSON in UTF-8.",
        401 => "The caller needs a key, and the request bears none that opens the service.",
        404 => "There is nothing of that name, or none any more.",
        408 => "The body did not arrive in time.",
        413 => "The body is too large.",
        415 => "The body does not say that it is JSON.",
        422 => "The request was read, but makes no sense or has no answer; `errors` says where and why.",
        429 => "The service is busy, or too many requests came from one address.",
        500 => "Something that nobody foresaw; the log has it under the id that is told.",
        503 => "The service is shutting down and takes no job any more.",
        _ => "A fault.",
    };

    static string Key(int status) => status.ToString(System.Globalization.CultureInfo.InvariantCulture);

    static JsonNode Node(Problem problem) => JsonNode.Parse(JsonSerializer.SerializeToUtf8Bytes(problem, AnswerJson.Default.Problem))!;
}

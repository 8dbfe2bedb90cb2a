using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Requests;
using FlowCalc.Examples;
using FlowCalc.Layouts;

namespace FlowCalc.Api.Catalogue;

/// <summary><c>GET /v1/examples</c>, <c>GET /v1/examples/{name}</c> and <c>GET /v1/layout-schema</c>.</summary>
internal static class ExampleEndpoints
{
    const string Path = "/v1/examples";

    /// <summary>Puts the calls on the service.</summary>
    public static void MapExamples(this IEndpointRouteBuilder app)
    {
        app.MapGet(Path, (Delegate)AnswerAllAsync)
            .WithName("Examples").WithTags("Layouts")
            .WithSummary("Example layouts")
            .WithDescription("Names and titles of layout documents that were invented as examples.")
            .DescribeRead<ExamplesAnswer>(takesUnits: false);
        app.MapGet(Path + "/{name}", AnswerOneAsync)
            .WithName("Example").WithTags("Layouts")
            .WithSummary("One example layout")
            .WithDescription("The bare document, to be sent to the calls that take one.")
            .DescribeRead<LayoutDocument>(takesUnits: false, named: new("name", "Name of the example.", ContractExamples.DemoName));
        app.MapGet("/v1/layout-schema", (Delegate)AnswerSchemaAsync)
            .WithName("LayoutSchema").WithTags("Layouts")
            .WithSummary("JSON Schema of the layout document")
            .WithDescription("JSON Schema 2020-12 of the document that the calls take. The service also checks what a schema cannot say, such as that the runs make a tree.")
            .DescribeSchema();
    }

    static Task AnswerAllAsync(HttpContext context) => QueryUnits.RefuseAny(context.Request) is { } fault
        ? ProblemWriter.WriteAsync(context, fault)
        : AnswerWriter.WriteAsync(context, new ExamplesAnswer(ExampleCatalogue.All), AnswerJson.Default.ExamplesAnswer);

    static Task AnswerOneAsync(HttpContext context, string name)
    {
        if (QueryUnits.RefuseAny(context.Request) is { } fault)
            return ProblemWriter.WriteAsync(context, fault);
        return ExampleCatalogue.Find(name) is { } document
            ? AnswerWriter.WriteBytesAsync(context, document, AnswerWriter.Json)
            : ProblemWriter.WriteAsync(context, Problems.NoSuch("example", name, Path));
    }

    static Task AnswerSchemaAsync(HttpContext context) => QueryUnits.RefuseAny(context.Request) is { } fault
        ? ProblemWriter.WriteAsync(context, fault)
        : AnswerWriter.WriteBytesAsync(context, LayoutSchema.Utf8, "application/schema+json");
}

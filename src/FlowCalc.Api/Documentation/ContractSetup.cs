using System.ComponentModel.DataAnnotations;
using System.Text.Json.Nodes;
using FlowCalc.Api.Answers;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using Scalar.AspNetCore;

namespace FlowCalc.Api.Documentation;

/// <summary>The contract at <c>/openapi/v1.json</c> and its readable page at <c>/docs</c>, in every environment and without a request to anywhere else.</summary>
internal static class ContractSetup
{
    const string Path = "/openapi/v1.json", Page = "/docs";

    const string PagePolicy =
        "default-src 'self'; script-src 'self' 'unsafe-inline'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; font-src 'self' data:; connect-src 'self'; worker-src 'self' blob:; object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    /// <summary>Registers what makes the contract.</summary>
    public static void AddContract(this WebApplicationBuilder builder)
    {
        builder.Services.ConfigureHttpJsonOptions(json =>
            json.SerializerOptions.NumberHandling = System.Text.Json.Serialization.JsonNumberHandling.Strict);
        builder.Services.AddOpenApi(ContractText.Name, options =>
        {
            options.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1;
            options.AddDocumentTransformer(Introduce);
            options.AddSchemaTransformer(ListWords);
        });
        builder.Services.AddSingleton<ContractText>();
    }

    /// <summary>Serves the contract and its page.</summary>
    public static void MapContract(this WebApplication app)
    {
        app.MapGet(Path, async (HttpContext context, ContractText contract) => await AnswerWriter.WriteBytesAsync(context, await contract.Utf8, AnswerWriter.Json)).ExcludeFromDescription();
        app.MapScalarApiReference(Page, page =>
        {
            page.WithTitle("FlowCalc").WithOpenApiRoutePattern(Path);
            page.DisableDefaultFonts();
            page.DisableTelemetry();
            page.DisableAgent();
            page.DisableMcp();
            page.HideDeveloperTools();
            page.HideClientButton();
        }).AddEndpointFilter((call, next) =>
        {
            call.HttpContext.Response.Headers.ContentSecurityPolicy = PagePolicy;
            return next(call);
        });
    }

    static Task Introduce(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancel)
    {
        document.Info = new OpenApiInfo
        {
            Title = "FlowCalc",
            Version = Engine.Answer.Version,
            Description =
                """
                Flow, balance and findings of plumbed-in fire-suppression systems in small-bore tube, from one layout document.

                Every answer is stateless; only jobs are kept, for a while, by the copy of the service that took them. Quantities are `{ "value", "unit" }`; pressures are gauge; numbers are written in full. Faults are problem details (RFC 9457), `application/problem+json`.

                An answer replaces neither the maker's instructions, the rules of a sport or class, local codes, licensed practice nor a discharge test, and is no approval.
                """,
            License = new OpenApiLicense { Name = "MIT", Identifier = "MIT" },
        };
        document.Servers = [];
        document.AddKeys();
        document.Tags = new HashSet<OpenApiTag>
        {
            new() { Name = "Flow", Description = "Answers about a layout." },
            new() { Name = "Studies", Description = "Answers about what a layout could be." },
            new() { Name = "Jobs", Description = "Studies that take long: their state, their progress, their end." },
            new() { Name = "Layouts", Description = "The layout document: its schema and examples." },
            new() { Name = "Catalogue", Description = "What a layout may name, with sources." },
            new() { Name = "Health", Description = "For whatever watches the service." },
        };
        return Task.CompletedTask;
    }

    static Task ListWords(OpenApiSchema schema, OpenApiSchemaTransformerContext context, CancellationToken cancel)
    {
        if (context.JsonPropertyInfo is { AttributeProvider: { } provider }
            && provider.GetCustomAttributes(typeof(AllowedValuesAttribute), true) is [AllowedValuesAttribute allowed])
        {
            schema.Enum = [.. allowed.Values.Select(value => JsonValue.Create((string)value!)!)];
            // A field that may be null names null among its words, or no null would fit.
            if (schema.Type?.HasFlag(JsonSchemaType.Null) == true)
                schema.Enum.Add(JsonNullSentinel.JsonNull);
        }
        return Task.CompletedTask;
    }
}

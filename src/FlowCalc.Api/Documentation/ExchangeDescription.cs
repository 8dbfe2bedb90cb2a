using FlowCalc.Api.Exchange;
using FlowCalc.Api.Hosting;
using Microsoft.OpenApi;

namespace FlowCalc.Api.Documentation;

/// <summary>What the contract says of the call that writes for other programs.</summary>
internal static class ExchangeDescription
{
    const string InpExample = "[TITLE]\nTwo nozzles\n[JUNCTIONS]\nP1 0 0 ;tee\n…\n[END]\n";

    const string CsvExample = "kind,id,name_in_file,pressure_bar,mass_flow_kg_s,volume_flow_L_min,velocity_m_s,share\r\nnozzle,driver,P4,10.3,0.0421,2.53,,0.128\r\n";

    /// <summary>Describes <c>POST /v1/exchange</c>.</summary>
    public static void DescribeExchange(this RouteHandlerBuilder call) => call
        .Produces<string>(200, ExchangeEndpoint.Text, ExchangeEndpoint.Csv)
        .ProducesFaults(400, 413, 415, 422, 429)
        .AddOpenApiOperationTransformer((operation, context, _) =>
        {
            var limits = context.ApplicationServices.GetRequiredService<ServiceLimits>();
            CallDescriptions.DescribeLayoutCall(operation, FormattableString.Invariant(
                $"""
                Takes a layout document of a liquid and writes it as an input file of EPANET, an open, public-domain program for pipe networks, so that its steady flow can be looked at with software that shares nothing with this service. Points are called `P0`, `P1` and so on and runs `R0`, `R1` in the document's order, with their ids beside them. Bends, tees, fittings, steps in bore and the bottle's outlet stand in the file as loss coefficients, as large as they are at the flows of our own answer: that program knows no loss which hangs on how a tee splits. Friction, balance and nozzles it works out on its own; its friction factor may differ by some per cent.

                As CSV (RFC 4180) the flow of any agent, unrounded: a row a point, then a row a run, with the names of the file. Units stand in the columns' names and follow `units`.

                Limits: a body of at most {limits.BodyBytes} bytes, at most {limits.Points} points, and {limits.FlowTime.TotalSeconds} s from when its work begins. {CallDescriptions.NoReplacement}
                """));
            CallDescriptions.AddChoice(operation, ExchangeEndpoint.Format, ExchangeEndpoint.Formats, "What to write: the input file, or the table of our own flow.");
            CallDescriptions.SetExample(operation, "200", ExchangeEndpoint.Text, null, "The file.");
            if (operation.Responses?.GetValueOrDefault("200")?.Content is { } content)
                foreach (var (type, example) in new[] { (ExchangeEndpoint.Text, InpExample), (ExchangeEndpoint.Csv, CsvExample) })
                    if (content.TryGetValue(type, out var file)) (file.Schema, file.Example) = (new OpenApiSchema { Type = JsonSchemaType.String }, example);
            return Task.CompletedTask;
        });
}

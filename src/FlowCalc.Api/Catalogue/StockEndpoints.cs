using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Requests;
using FlowCalc.Stock;
using UnitsNet;
using Quantity = FlowCalc.Api.Answers.Quantity;

namespace FlowCalc.Api.Catalogue;

/// <summary><c>GET /v1/tubes</c> and <c>GET /v1/fittings</c>.</summary>
internal static class StockEndpoints
{
    /// <summary>Puts the calls on the service.</summary>
    public static void MapStock(this IEndpointRouteBuilder app)
    {
        app.MapGet("/v1/tubes", (Delegate)AnswerTubesAsync)
            .WithName("Tubes").WithTags("Catalogue")
            .WithSummary("Tubes that a layout may name")
            .WithDescription("Small tube sizes as they are commonly sold, with bore, roughness, least bend radius and sources.")
            .DescribeRead<TubesAnswer>(takesUnits: true);
        app.MapGet("/v1/fittings", (Delegate)AnswerFittingsAsync)
            .WithName("Fittings").WithTags("Catalogue")
            .WithSummary("Fittings that a layout may name")
            .WithDescription("Fittings whose loss has a source, and those whose loss hangs on a bore that the layout must give.")
            .DescribeRead<FittingsAnswer>(takesUnits: true);
    }

    static Task AnswerTubesAsync(HttpContext context)
    {
        var write = QueryUnits.Read(context.Request, out var fault);
        return fault is null ? AnswerWriter.WriteAsync(context, Tubes(write), AnswerJson.Default.TubesAnswer) : ProblemWriter.WriteAsync(context, fault);
    }

    static Task AnswerFittingsAsync(HttpContext context)
    {
        var write = QueryUnits.Read(context.Request, out var fault);
        return fault is null ? AnswerWriter.WriteAsync(context, Fittings(write), AnswerJson.Default.FittingsAnswer) : ProblemWriter.WriteAsync(context, fault);
    }

    static TubesAnswer Tubes(UnitWriter write) => new(
        [.. TubeCatalogue.All.Select(tube => new TubeAnswer(
            tube.Id, tube.Material, tube.Standard, write.Of(tube.OutsideDiameter), write.Of(tube.Wall), write.Of(tube.Bore),
            write.Of(tube.Roughness), write.Of(tube.RoughnessLow), write.Of(tube.RoughnessHigh), write.Of(tube.MinimumBendRadius),
            tube.WorkingPressure is { } pressure ? write.Of(pressure) : null, tube.Note, tube.Sources))],
        SourceAnswers.Of(TubeCatalogue.All.Select(tube => tube.Sources)));

    static FittingsAnswer Fittings(UnitWriter write) => new(
        [.. FittingCatalogue.All.Select(fitting => new FittingAnswer(
            fitting.Id, fitting.Kind, Known(fitting.Bore, write), Known(fitting.Length, write), fitting.LossCoefficient, fitting.Kv,
            Known(fitting.Insertion, write), fitting.Note, fitting.Sources))],
        SourceAnswers.Of(FittingCatalogue.All.Select(fitting => fitting.Sources)));

    static Quantity? Known(Length? length, UnitWriter write) => length is { } known ? write.Of(known) : null;
}

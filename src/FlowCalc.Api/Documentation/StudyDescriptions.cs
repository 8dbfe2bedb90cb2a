using FlowCalc.Api.Compare;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Size;

namespace FlowCalc.Api.Documentation;

/// <summary>What the contract says of each study beyond its name and its summary.</summary>
internal static class StudyDescriptions
{
    /// <summary>Describes <c>POST /v1/compare</c>.</summary>
    public static void DescribeCompare(this RouteHandlerBuilder call) => call
        .Produces<CompareAnswer>(200, CallDescriptions.Json)
        .ProducesFaults(400, 413, 415, 422, 429)
        .AddOpenApiOperationTransformer((operation, context, _) =>
        {
            var limits = context.ApplicationServices.GetRequiredService<ServiceLimits>();
            CallDescriptions.DescribeBody(operation, FormattableString.Invariant(
                $"""
                Takes a layout document and named variants of it, and answers all of them side by side: the steady flow and, where the supply is a bottle, the discharge of each, every nozzle's difference from the base, and a ranking with its reason. A variant sets parts of the base by id, such as `"runs/R11/tube": "feed"` (`null` takes a part away), or is a whole layout. Points and runs go by id, attitudes by name, entries of other lists by their place from 0; a stroke within a name is `~1`, a tilde `~0`.

                Limits: a body of at most {limits.BodyBytes} bytes, at most {limits.Variants} variants of at most {limits.DischargePoints} points each, and {limits.CompareTime.TotalSeconds} s from when its work begins; with `explain=true` at most {limits.ExplainedPoints} points of all layouts together. {CallDescriptions.NoReplacement}
                """), "A layout and its variants, UTF-8. Unknown fields and repeated names are faults.", ContractExamples.Request("compare"));
            CallDescriptions.AddExplain(operation, "the steady flow of the base and of every variant, each nozzle's differences, and the numbers by which they are ranked: equations with their numbers in place and their sources");
            CallDescriptions.SetExample(operation, "200", CallDescriptions.Json, ContractExamples.Answer("compare"), "The comparison; the example shows the first two entries of every list.");
            return Task.CompletedTask;
        });

    /// <summary>Describes <c>POST /v1/size</c>.</summary>
    public static void DescribeSize(this RouteHandlerBuilder call) => call
        .Produces<SizeAnswer>(200, CallDescriptions.Json)
        .ProducesFaults(400, 413, 415, 422, 429)
        .AddOpenApiOperationTransformer((operation, context, _) =>
        {
            var limits = context.ApplicationServices.GetRequiredService<ServiceLimits>();
            CallDescriptions.DescribeBody(operation, FormattableString.Invariant(
                $"""
                Takes a layout document, a stock of tubes and of nozzle sizes, what is free to change, and a wish; chooses a tube for every free run and a size for every free nozzle so that the wish is met and the objective is best, and returns the document with the sizes in it, ready to post again. `proof` is `exact` where no better choice exists (for liquids, small choices are searched in full), else `gap`, and `objective.bound` says what no choice is below. A wish that no sizes meet is answered with `possible: false` and what is in its way.

                `free` names runs and nozzles by id (`runs/…` or `points/…` where both have it); an array within it is a group that keeps one choice. Left out, everything is free that the stock has sizes for. What is there may always stay. An orifice without a discharge coefficient keeps the nozzle's own. `within` is the time of the requirement's part and counts in every case of the document.

                Limits: a body of at most {limits.BodyBytes} bytes, at most {limits.SizePoints} points, {limits.SizeStock} tubes and {limits.SizeStock} nozzle sizes, work of {limits.SizeWork} solves, after which the search answers with what it has, and {limits.SizeTime.TotalSeconds} s from when its work begins; with `explain=true` at most {limits.ExplainedPoints} points. {CallDescriptions.NoReplacement}
                """), "A layout, a stock, what is free, a wish and an objective, UTF-8. Unknown fields and repeated names are faults.", ContractExamples.Request("size"));
            CallDescriptions.AddExplain(operation, "the steady flow with the sizes, each nozzle's deviation, and what the objective comes to, piece by piece: equations with their numbers in place and their sources");
            CallDescriptions.SetExample(operation, "200", CallDescriptions.Json, ContractExamples.Answer("size"), "The sizes; the example shows the first two entries of every list.");
            return Task.CompletedTask;
        });
}

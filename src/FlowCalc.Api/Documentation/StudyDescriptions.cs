using FlowCalc.Api.Compare;
using FlowCalc.Api.Hosting;

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

                Limits: a body of at most {limits.BodyBytes} bytes, at most {limits.Variants} variants of at most {limits.DischargePoints} points each, and {limits.CompareTime.TotalSeconds} s from when the body has arrived. {CallDescriptions.NoReplacement}
                """), "A layout and its variants, UTF-8. Unknown fields and repeated names are faults.", ContractExamples.Request("compare"));
            CallDescriptions.SetExample(operation, "200", CallDescriptions.Json, ContractExamples.Answer("compare"), "The comparison; the example shows the first two entries of every list.");
            return Task.CompletedTask;
        });
}

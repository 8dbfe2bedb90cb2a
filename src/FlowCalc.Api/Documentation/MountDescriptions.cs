using FlowCalc.Api.Hosting;
using FlowCalc.Api.Mounts;

namespace FlowCalc.Api.Documentation;

/// <summary>What the contract says of the call on mounts.</summary>
internal static class MountDescriptions
{
    /// <summary>Describes <c>POST /v1/mount</c>.</summary>
    public static void DescribeMount(this RouteHandlerBuilder call) => call
        .Produces<MountAnswer>(200, CallDescriptions.Json)
        .ProducesFaults(400, 413, 415, 422, 429)
        .AddOpenApiOperationTransformer((operation, context, _) =>
        {
            var limits = context.ApplicationServices.GetRequiredService<ServiceLimits>();
            CallDescriptions.DescribeBody(operation, FormattableString.Invariant(
                $"""
                Takes a layout document with a `mount` and answers whether the bottle stays where it is bolted: pull and shear of every bolt in every load case, what they, the sheet, the bracket's foot, an adapter plate, threads and straps bear, whether friction or stops hold the bottle along its axis, which check governs, and the change that clears a finding. A load case of any direction is searched over all directions. No flow is solved.

                Places are in the mount's own axes: z from the structure to the bottle, x and y in its face. Forces are static, of a rigid bracket; no credit is given to preload. What the document leaves out is not answered and stands in `notAnswered`.

                Limits: a body of at most {limits.BodyBytes} bytes, at most {limits.MountPoints} points, and {limits.MountTime.TotalSeconds} s from when its work begins. {CallDescriptions.NoReplacement}
                """), "A layout document with a mount, UTF-8, whose JSON Schema is also at `/v1/layout-schema`. Unknown fields and repeated names are faults.", ContractExamples.Demo());
            CallDescriptions.SetExample(operation, "200", CallDescriptions.Json, ContractExamples.Answer("mount"), "The mount; the example shows the first two entries of every list.");
            return Task.CompletedTask;
        });
}

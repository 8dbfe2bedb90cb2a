using FlowCalc.Api.Calibration;
using FlowCalc.Api.Hosting;

namespace FlowCalc.Api.Documentation;

/// <summary>What the contract says of the call on a test of the built system.</summary>
internal static class CalibrationDescription
{
    /// <summary>Describes <c>POST /v1/calibrate</c>.</summary>
    public static void DescribeCalibration(this RouteHandlerBuilder call) => call
        .Produces<CalibrationAnswer>(200, CallDescriptions.Json)
        .ProducesFaults(400, 413, 415, 422, 429)
        .AddOpenApiOperationTransformer((operation, context, _) =>
        {
            var limits = context.ApplicationServices.GetRequiredService<ServiceLimits>();
            CallDescriptions.DescribeLayoutCall(operation, FormattableString.Invariant(
                $"""
                Takes a layout document with `measured`, what a test of the built system showed, and answers what explains the readings best: the layout as drawn, another pressure of the test's supply, one other roughness or bore throughout, other K-factors by type of nozzle, or a kink or plug in one run, which is tried in every run. Each cause is fitted by least squares within bounds and comes with its size, its standard error and interval, χ², and a score by which causes are ranked; those that the readings do not tell apart are named. The likeliest is then put into the layout, whose flow with its own agent and supply stands beside that of the layout as drawn, with the changes of the document that give it.

                Readings are flows or what was collected in a time by nozzle, and static pressures in the tube, at a supply that is held at a pressure; or the time of the whole discharge from the bottle, which finds one unknown of the whole system. The layout as drawn stands until another cause has strong evidence. One cause at a time is tried: two kinks at once are found as readings that disagree. The document without `measured` is a 422.

                Limits: a body of at most {limits.BodyBytes} bytes, at most {limits.CalibrationPoints} points, and {limits.CalibrationTime.TotalSeconds} s from when its work begins. {CallDescriptions.NoReplacement}
                """));
            CallDescriptions.SetExample(operation, "200", CallDescriptions.Json, ContractExamples.Answer("calibrate"), "The demo's test; the example shows the first two entries of every list.");
            return Task.CompletedTask;
        });
}
